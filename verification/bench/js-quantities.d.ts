declare module 'js-quantities' {
  interface Qty {
    mul(other: Qty | number): Qty;
    div(other: Qty | number): Qty;
    to(unit: string): Qty;
    readonly scalar: number;
  }
  function Qty(value: number, unit: string): Qty;
  export default Qty;
}

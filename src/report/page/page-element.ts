/** A field or an element of a page, as far as the plan touches it. */
export interface PageElement {
  textContent: string | null;
  value?: string;
  checked?: boolean;
  open?: boolean;
  readonly dataset: Readonly<Record<string, string | undefined>>;
  classList: { toggle(name: string, on: boolean): void };
  addEventListener(event: string, call: () => void): void;
}

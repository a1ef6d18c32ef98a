/** `hoopwright/tables`: pipe sizes, grades, allowable stresses and code factors, each value with its source and tag. */
export * from './pipe/tables/index.js';

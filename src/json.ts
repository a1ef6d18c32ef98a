/** `hoopwright/json`: cases as text with units, designs as plain JSON, and the JSON Schema of a case. */
export * from './json/index.js';

/** A text between tags or in an attribute: nothing of it can be read as markup. */
export function escapedHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** What a function of plain data has given, since tests ask for the same more than once and nothing else goes in. */
export function remembered<A extends readonly unknown[], R>(compute: (...given: A) => R): (...given: A) => R {
  const found = new Map<string, R>();
  return (...given) => {
    const asked = JSON.stringify(given);
    const known = found.get(asked);
    if (known !== undefined) return known;
    const result = compute(...given);
    found.set(asked, result);
    return result;
  };
}

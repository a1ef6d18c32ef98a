/** Version of this library; a test holds it to package.json. */
export const version = '0.2.0';

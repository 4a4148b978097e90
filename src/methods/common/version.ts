/** Version of the package, as in its package.json. */
export const version = '0.2.0';

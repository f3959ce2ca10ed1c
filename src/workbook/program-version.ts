/** The version of the program, as package.json says it; a test holds the two together. */
export const programVersion = '0.1.0';

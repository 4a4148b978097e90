/** Control characters in text from a file could drive the terminal: they become spaces. */
export const plain = (text: string): string => text.replace(/\p{Cc}/gu, ' ');

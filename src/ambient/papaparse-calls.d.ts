// what src/record/reading/cells.ts calls of it; its published declarations would bring Node's types into the core
declare module 'papaparse' {
  interface Row {
    data: string[];
    errors: { type: string }[];
    meta: { cursor: number };
  }
  const Papa: {
    parse(text: string, options: { delimiter: string; newline: string; step: (row: Row) => void }): void;
  };
  export default Papa;
}

// what src/record/cells.ts calls of it; its published declarations would bring Node's types into the core
declare module 'papaparse' {
  const Papa: {
    parse(text: string, options: { delimiter: string; skipEmptyLines: false }): { data: string[][] };
  };
  export default Papa;
}

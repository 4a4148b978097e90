/** What TypeDoc's theme lacks for this book. Each change names the text that it stands on, and fails where that text is gone. */
import { readFileSync, writeFileSync } from 'node:fs';

const changes = [
  // a word that is exactly a symbol comes first; the index keeps symbols between low lines
  ['i.split(" ").map(c=>c.length?`*${c}*`:"")', 'i.split(" ").map(c=>c.length?`_${c}_^60 *${c}*`:"")'],
  // a link inside a summary cannot be reached by every reader: the link becomes the first entry of what unfolds
  ['De(t,o);let a=', 'De({...t,path:void 0},o);let a='],
  ['for(let l of t.children)Ve(l,c,i)', 't.path&&De(t,c.appendChild(document.createElement("li")));for(let l of t.children)Ve(l,c,i)'],
];

/** Changes TypeDoc's script. */
export function changeScript(file) {
  let text = readFileSync(file, 'utf8');
  for (const [from, to] of changes) {
    if (text.split(from).length !== 2) throw new Error(`TypeDoc's script is not the one that tools/book/theme.js knows: ${from}`);
    text = text.replace(from, () => to);
  }
  writeFileSync(file, text);
}

/** Headings without gaps between their levels, a main landmark, and no link inside what folds and unfolds. */
export function accessible(html) {
  let level = 0;
  return (
    html
      .replace('<div class="col-content">', '<div class="col-content" role="main">')
      .replace('<div class="col-sidebar">', '<div class="col-sidebar" role="complementary" aria-label="contents and settings">')
      // what moves by itself on a narrow screen is reached by keys too
      .replaceAll('<table>', '<table tabindex="0">')
      .replaceAll('<span class="katex-display">', '<span class="katex-display" tabindex="0">')
      .replace(/<summary[^]*?<\/summary>/g, (summary) => summary.replace(/<a [^>]*tsd-anchor-icon[^]*?<\/a>/g, ''))
      .replace(/<h([1-6])(?=[\s>])/g, (tag, own) => {
        const before = level;
        level = Math.min(Number(own), before + 1);
        return level === Number(own) ? tag : `${tag} aria-level="${level}"`;
      })
  );
}

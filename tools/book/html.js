/** Text that is safe between tags and in attributes. */
export const escaped = (text) =>
  String(text).replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign]);

const style = `:root{color-scheme:light dark}
body{margin:0 auto;padding:1rem;max-width:72rem;font:16px/1.5 system-ui,sans-serif;color:#1a1a1a;background:#fff}
h1,th{overflow-wrap:anywhere}
a{color:#0b5cad}h1{font-size:1.4rem}
pre{font:13px/1.5 ui-monospace,monospace;overflow-x:auto;counter-reset:line}
pre>span{display:block;padding-left:4.5em;min-height:1.5em}
pre>span::before{counter-increment:line;content:counter(line);position:absolute;margin-left:-4.5em;width:3.5em;text-align:right;color:#5c5c5c}
:target{background:#ffe9a8;outline:2px solid #b8860b}
table{border-collapse:collapse;font-size:14px}th,td{border:1px solid #999;padding:.3em .6em;text-align:left;vertical-align:top}
td code,td{overflow-wrap:anywhere}
@media(prefers-color-scheme:dark){body{color:#eee;background:#1d1f21}a{color:#8ab8ff}pre>span::before{color:#a8a8a8}:target{background:#4a3c00}}`;

/** A small page without script, which leads home. */
export const page = (path, title, body) => {
  const up = '../'.repeat(path.split('/').length - 1);
  return `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"/><meta name="viewport" content="width=device-width, initial-scale=1"/>
<title>${escaped(title)}</title><style>${style}</style></head><body><nav aria-label="home"><a href="${up}index.html">testpiece: the formula book</a></nav>
<main><h1>${escaped(title)}</h1>${body}</main></body></html>
`;
};

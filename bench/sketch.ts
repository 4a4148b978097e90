/** Sketches as SVG: lines, arrows, words; the colours of Okabe and Ito, on white so that both themes of the book can show them. */
export const ink = { curve: '#0072b2', line: '#d55e00', law: '#007a5a', mark: '#222222', pale: '#d9d9d9' } as const;

export type Point = readonly [x: number, y: number];

const at = (points: readonly Point[]): string => points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** A line through points; dashes tell lines apart where colours do not. */
export const line = (points: readonly Point[], color: string = ink.mark, width = 1.2, dash = ''): string =>
  `<polyline points="${at(points)}" fill="none" stroke="${color}" stroke-width="${width}"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}/>`;

/** A filled outline. */
export const area = (points: readonly Point[], fill: string = ink.pale, stroke: string = ink.mark): string =>
  `<polygon points="${at(points)}" fill="${fill}" stroke="${stroke}" stroke-width="1.2"/>`;

export const dot = ([x, y]: Point, color: string = ink.mark): string => `<circle cx="${x}" cy="${y}" r="4" fill="${color}"/>`;

/** Words; the part after a low line stands lower, as in R_p. */
export function words([x, y]: Point, text: string, color: string = ink.mark, anchor: 'start' | 'middle' | 'end' = 'start'): string {
  const shown = text.replace(/_(\w[\w.]*)/g, '<tspan dy="4" font-size="11">$1</tspan><tspan dy="-4">&#8203;</tspan>');
  return `<text x="${x}" y="${y}" fill="${color}" text-anchor="${anchor}">${shown}</text>`;
}

/** An arrow from one point to another; `both` for a dimension. */
export function arrow(from: Point, to: Point, color: string = ink.mark, both = false): string {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const head = ([x, y]: Point, turn: number): string =>
    area(
      [0, 2.7, -2.7].map((by) => (by === 0 ? [x, y] : [x - 9 * Math.cos(turn + by / 9), y - 9 * Math.sin(turn + by / 9)])),
      color,
      color,
    );
  return line([from, to], color) + head(to, angle) + (both ? head(from, angle + Math.PI) : '');
}

/** The frame of a plot: axes with their words, and a way from values to places. */
export function plot(xWord: string, yWord: string, xMost: number, yMost: number): { axes: string; to: (x: number, y: number) => Point } {
  const [left, bottom, right, top] = [50, 260, 500, 20];
  const to = (x: number, y: number): Point => [left + ((right - left) * x) / xMost, bottom - ((bottom - top) * y) / yMost];
  const axes =
    arrow([left, bottom], [right + 10, bottom]) +
    arrow([left, bottom], [left, top - 10]) +
    words([right + 5, bottom + 22], xWord, ink.mark, 'end') +
    words([left + 8, top - 2], yWord);
  return { axes, to };
}

/** The whole sketch, with its name and a description for those who do not see it. */
export const sketch = (title: string, description: string, parts: readonly string[], width = 530, height = 290): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="sans-serif" font-size="14"><title>${title}</title><desc>${description}</desc><rect width="100%" height="100%" fill="#ffffff"/>${parts.join('')}</svg>\n`;

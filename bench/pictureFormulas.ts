/** `npm run pictures`: a sketch for each central formula, `docs/figures/<function>.svg`, from invented curves. The formula's page shows it. */
import { writeFileSync } from 'node:fs';
import { hollomon, rambergOsgoodStrain } from '../src/index.js';
import { area, arrow, dot, ink, line, plot, sketch, words, type Point } from './sketch.js';

const save = (name: string, text: string): void => {
  writeFileSync(`docs/figures/${name}.svg`, text);
};
const range = (n: number, from: number, to: number): number[] => Array.from({ length: n + 1 }, (_, k) => from + ((to - from) * k) / n);
/** An upright line down to the axis. */
const foot = (to: (x: number, y: number) => Point, x: number, y: number): string => line([to(x, 0), to(x, y)], ink.mark, 1, '3 3');

function proofStrength(): void {
  const { axes, to } = plot('strain e', 'stress R', 0.009, 360);
  const law = { modulus: 70_000, proofStress: 270, exponent: 9 };
  const curve = range(120, 0, 300).map((R) => to(rambergOsgoodStrain(law, R), R));
  const offset = 0.002;
  save(
    'proofStrength',
    sketch(
      'Proof strength',
      'A stress-strain curve; a line parallel to its elastic part, shifted by the offset, meets it at the proof strength.',
      [
        axes,
        line([to(0, 0), to(300 / 70_000, 300)], ink.law, 1.5, '2 3'),
        line([to(offset, 0), to(offset + 330 / 70_000, 330)], ink.line, 1.8, '7 4'),
        line(curve, ink.curve, 2.4),
        dot(to(offset + 270 / 70_000, 270), ink.line),
        line([to(0, 270), to(offset + 270 / 70_000, 270)], ink.mark, 1, '3 3'),
        words([to(0, 270)[0] + 6, to(0, 270)[1] - 6], 'R_p0.2', ink.line),
        arrow([to(0, 0)[0], 274], [to(offset, 0)[0], 274], ink.line, true),
        words([to(offset, 0)[0] + 8, 279], 'offset 0.002', ink.line),
        words(to(0.0011, 62), 'slope m_E', ink.law),
        words(to(0.0079, 312), 'curve', ink.curve),
      ],
    ),
  );
}

function yieldPoints(): void {
  const { axes, to } = plot('strain e', 'stress R', 5, 400);
  const corners: Point[] = [
    [0, 0],
    [0.7, 300],
    [0.85, 252],
    [1.05, 279],
    [1.4, 270],
    [1.7, 276],
    [2.1, 265],
    [2.5, 274],
    [2.8, 268],
    [3.6, 314],
    [4.8, 365],
  ];
  save(
    'yieldPoints',
    sketch(
      'Yield points',
      'A curve with a sharp upper yield point, a first dip that is left out, a wavy plateau whose lowest point is the lower yield strength, and the yield point extension up to the start of hardening.',
      [
        axes,
        line(
          corners.map(([x, y]) => to(x, y)),
          ink.curve,
          2.4,
        ),
        dot(to(0.7, 300), ink.line),
        words([to(0.7, 300)[0] - 8, to(0.7, 300)[1] - 8], 'R_eH', ink.line, 'end'),
        dot(to(2.1, 265), ink.law),
        words([to(2.1, 265)[0], to(2.1, 265)[1] + 22], 'R_eL', ink.law, 'middle'),
        words([to(0.85, 252)[0] + 4, to(0.85, 252)[1] + 44], 'first dip: left out', ink.mark),
        foot(to, 0.7, 300),
        foot(to, 2.8, 268),
        arrow(to(0.7, 60), to(2.8, 60), ink.mark, true),
        words([to(1.75, 60)[0], to(1.75, 60)[1] - 8], 'A_e', ink.mark, 'middle'),
        words(to(3.3, 330), 'hardening', ink.curve, 'end'),
      ],
    ),
  );
}

function considere(): void {
  const { axes, to } = plot('true strain ε', 'σ, dσ/dε', 0.5, 800);
  const law = hollomon({ strengthCoefficient: 700, exponent: 0.22 });
  const stress = range(80, 0.002, 0.48).map((e) => to(e, law.stress(e)));
  const rate = range(80, 0.105, 0.48).map((e) => to(e, law.rate(e)));
  const neck = law.neckingStrain;
  save(
    'considere',
    sketch("Considère's construction", 'The true stress rises, the hardening rate falls; where they cross the neck begins.', [
      axes,
      line(stress, ink.curve, 2.4),
      line(rate, ink.line, 2.4, '7 4'),
      foot(to, neck, law.stress(neck)),
      dot(to(neck, law.stress(neck))),
      words([to(neck, 0)[0], 278], 'ε_u', ink.mark, 'middle'),
      words([to(neck, law.stress(neck))[0], to(neck, law.stress(neck))[1] + 85], '  a neck begins: dσ/dε = σ'),
      words([to(0.4, law.stress(0.4))[0], to(0.4, law.stress(0.4))[1] - 12], 'true stress σ', ink.curve, 'middle'),
      words([to(0.14, law.rate(0.14))[0] + 14, to(0.14, 740)[1]], 'hardening rate dσ/dε', ink.line),
    ]),
  );
}

function fitModulus(): void {
  const { axes, to } = plot('strain as recorded', 'stress R', 10, 400);
  const [shift, slope] = [2.2, 80];
  // a toe, the straight part, and yielding
  const curve = range(100, 0, 9.5).map((e) => {
    const straight = slope * (e - shift);
    const toe = 0.5 * (straight + Math.sqrt(straight ** 2 + 55 ** 2)) - 0.5 * (Math.sqrt((slope * shift) ** 2 + 55 ** 2) - slope * shift);
    return to(e, toe / (1 + (Math.max(toe, 0) / 330) ** 6) ** (1 / 6));
  });
  save(
    'fitModulus',
    sketch(
      'Elastic line and origin of strain',
      'The straight part of a curve between a toe and yielding; its line continued down to zero stress gives the origin of strain.',
      [
        axes,
        line([to(shift, 0), to(shift + 4.6, 368)], ink.line, 1.8, '7 4'),
        line(curve, ink.curve, 2.4),
        line([to(3.4, 96), to(5.4, 256)], ink.law, 6, ''),
        dot(to(shift, 0), ink.line),
        words([to(shift, 0)[0], 280], 'e_0: strain counts from here', ink.line, 'middle'),
        words([to(0.2, 30)[0], to(0.2, 30)[1] - 14], 'toe: slack, seating', ink.curve),
        words([to(5.4, 180)[0] + 4, to(5.4, 180)[1]], 'window of the fit, slope m_E', ink.law),
        words([to(8.2, 330)[0], to(8.2, 330)[1] - 14], 'yielding', ink.curve, 'middle'),
      ],
    ),
  );
}

/** A round bar lying along x, with its heads, around a height; `neck` is how much the middle has drawn in. */
function bar(y: number, half: number, neck: number, gap: number): string {
  const upper = (from: number, to: number): Point[] =>
    range(40, from, to).map((x): Point => [x, y - 16 + neck * 8 * Math.exp(-(((x - 265) / 22) ** 2))]);
  const side = (sign: 1 | -1): string => {
    const points = sign < 0 ? upper(265 - half, 265 - gap) : upper(265 + gap, 265 + half);
    const end = 265 + sign * (half + 50);
    const edge = sign < 0 ? points : [...points].reverse();
    const outline: Point[] = [[end, y - 28], [265 + sign * (half + 14), y - 28], ...edge];
    const mirrored = outline.map(([x, v]): Point => [x, 2 * y - v]).reverse();
    return area([...outline, ...mirrored]);
  };
  const joint =
    gap === 0
      ? line(
          [
            [265, y - 14],
            [265, y + 14],
          ],
          ink.pale,
          4,
        )
      : '';
  return side(-1) + side(1) + joint;
}

function elongationAfterFracture(): void {
  const mark = (x: number, y: number): string =>
    line(
      [
        [x, y - 22],
        [x, y + 22],
      ],
      ink.line,
      2,
    );
  const dimension = (from: number, to: number, y: number, text: string): string =>
    arrow([from, y], [to, y], ink.mark, true) + words([265, y - 6], text, ink.mark, 'middle');
  save(
    'elongationAfterFracture',
    sketch(
      'Gauge length before and after',
      'A round test piece with two marks, and the broken halves fitted together: the marks are farther apart, and a neck has formed.',
      [
        bar(60, 110, 0, 0),
        mark(265 - 80, 60),
        mark(265 + 80, 60),
        dimension(185, 345, 115, 'L_0 between the marks'),
        dimension(155, 375, 140, 'L_c parallel length'),
        bar(200, 132, 1, 1.5),
        mark(265 - 101, 200),
        mark(265 + 101, 200),
        dimension(164, 366, 258, 'L_u after fracture, halves fitted together'),
      ],
    ),
  );
}

function bridgmanCorrection(): void {
  const radius = 150;
  const neck = 45;
  const profile = (sign: 1 | -1): Point[] =>
    range(40, -0.68, 0.68).map((angle): Point => [200 + sign * (neck + radius * (1 - Math.cos(angle))), 145 + radius * Math.sin(angle)]);
  const outline = [...profile(-1), ...[...profile(1)].reverse()];
  save(
    'bridgmanCorrection',
    sketch('Radii of a neck', 'A neck seen from the side: the radius a of its smallest section, and the radius R of its profile.', [
      area(outline),
      line(
        [
          [200, 20],
          [200, 270],
        ],
        ink.mark,
        1,
        '10 3 2 3',
      ),
      arrow([200, 145], [200 + neck, 145], ink.line, true),
      words([204, 138], 'a', ink.line),
      dot([200 + neck + radius, 145], ink.curve),
      arrow([200 + neck + radius, 145], [200 + neck + radius * (1 - Math.cos(0.5)), 145 - radius * Math.sin(0.5)], ink.curve),
      words([345, 100], 'R', ink.curve),
      words([415, 150], 'centre', ink.curve),
      line(profile(1), ink.curve, 2.4),
      arrow([200, 18], [200, 2]),
      words([210, 16], 'F'),
    ]),
  );
}

function flexuralStress(): void {
  const beam = (left: number, noses: readonly number[], title: string, arm: string): string => {
    const right = left + 200;
    const support = (x: number): string =>
      area([
        [x, 112],
        [x - 9, 130],
        [x + 9, 130],
      ]);
    const share = noses.length === 1 ? 'F' : 'F/2';
    return [
      area([
        [left - 15, 100],
        [right + 15, 100],
        [right + 15, 112],
        [left - 15, 112],
      ]),
      support(left),
      support(right),
      ...noses.map((x) => arrow([left + x, 60], [left + x, 98], ink.line) + words([left + x, 52], share, ink.line, 'middle')),
      arrow([left, 150], [right, 150], ink.mark, true),
      words([left + 100, 168], 'span L', ink.mark, 'middle'),
      arrow([left, 82], [left + noses[0]!, 82], ink.law, true),
      words([left + noses[0]! / 2, 76], arm, ink.law, 'middle'),
      words([left + 100, 24], title, ink.mark, 'middle'),
      // the moment along the beam
      area([[left, 195], ...noses.map((x): Point => [left + x, 245]), [right, 195]], '#cfe3f1', ink.curve),
      words([left + 100, 265], 'M = F a / 2', ink.curve, 'middle'),
    ].join('');
  };
  save(
    'flexuralStress',
    sketch(
      'Beams in three and four points',
      'Two beams on supports, one with a nose in the middle, one with two; below each its bending moment, which is the same between two noses.',
      [beam(35, [100], 'three points', 'a = L/2'), beam(300, [200 / 3, 400 / 3], 'four points', 'a')],
      535,
    ),
  );
}

function brinellHardness(): void {
  const [radius, surface, depth] = [85, 172, 27];
  const centre = surface + depth - radius;
  const half = Math.sqrt(radius ** 2 - (radius - depth) ** 2);
  const angle = Math.asin(half / radius);
  const cap = range(30, -angle, angle).map((t): Point => [265 + radius * Math.sin(t), centre + radius * Math.cos(t)]);
  save(
    'brinellHardness',
    sketch(
      'A ball and its indentation',
      'A ball of diameter D pressed by the force F into a surface; its indentation has the diameter d and the depth h.',
      [
        `<circle cx="265" cy="${centre}" r="${radius}" fill="#f4f4f4" stroke="${ink.mark}" stroke-width="1.2"/>`,
        area([[60, surface], [265 - half, surface], ...cap, [265 + half, surface], [470, surface], [470, 250], [60, 250]]),
        line(cap, ink.curve, 2.6),
        arrow([265 - radius, centre], [265 + radius, centre], ink.mark, true),
        words([200, centre - 8], 'D', ink.mark, 'middle'),
        arrow([265 - half, surface + depth + 30], [265 + half, surface + depth + 30], ink.curve, true),
        line(
          [
            [265 - half, surface],
            [265 - half, surface + depth + 36],
          ],
          ink.curve,
          1,
          '3 3',
        ),
        line(
          [
            [265 + half, surface],
            [265 + half, surface + depth + 36],
          ],
          ink.curve,
          1,
          '3 3',
        ),
        words([265, surface + depth + 48], 'd', ink.curve, 'middle'),
        arrow([405, surface], [405, surface + depth], ink.line, true),
        line(
          [
            [265, surface + depth],
            [412, surface + depth],
          ],
          ink.line,
          1,
          '3 3',
        ),
        words([414, surface + depth / 2 + 5], 'h', ink.line),
        arrow([265, 78], [265, 112], ink.line),
        words([273, 96], 'F', ink.line),
      ],
      530,
      260,
    ),
  );
}

function pistonArea(): void {
  const wall = (y: number): string =>
    area([
      [60, y],
      [380, y],
      [380, y + 14],
      [60, y + 14],
    ]);
  const ring = (cx: number): string =>
    `<circle cx="${cx}" cy="130" r="62" fill="#cfe3f1" stroke="${ink.mark}" stroke-width="1.2"/><circle cx="${cx}" cy="130" r="27" fill="#ffffff" stroke="${ink.mark}" stroke-width="1.2"/>`;
  save(
    'pistonArea',
    sketch(
      'Pressure on the annulus of a piston',
      'A cylinder cut open: oil on the rod side presses on the ring around the rod, and the rod pulls with the force F; beside it the ring seen from the end.',
      [
        area(
          [
            [184, 68],
            [380, 68],
            [380, 192],
            [184, 192],
          ],
          '#cfe3f1',
        ),
        wall(54),
        wall(192),
        area([
          [160, 68],
          [184, 68],
          [184, 192],
          [160, 192],
        ]),
        area(
          [
            [184, 103],
            [350, 103],
            [350, 157],
            [184, 157],
          ],
          '#ffffff',
        ),
        area([
          [366, 68],
          [380, 68],
          [380, 103],
          [366, 103],
        ]),
        area([
          [366, 157],
          [380, 157],
          [380, 192],
          [366, 192],
        ]),
        area(
          [
            [345, 103],
            [385, 103],
            [385, 157],
            [345, 157],
          ],
          '#ffffff',
          '#ffffff',
        ),
        line([
          [340, 103],
          [395, 103],
        ]),
        line([
          [340, 157],
          [395, 157],
        ]),
        line([
          [395, 103],
          [395, 157],
        ]),
        ...[80, 92, 168, 180].map((y) => arrow([222, y], [187, y], ink.curve)),
        words([232, 90], 'p', ink.curve),
        arrow([275, 104], [275, 156], ink.law, true),
        words([282, 135], 'rod d_r', ink.law),
        arrow([110, 69], [110, 191], ink.line, true),
        words([100, 135], 'bore D', ink.line, 'end'),
        arrow([158, 130], [122, 130]),
        words([128, 122], 'F'),
        ring(480),
        words([480, 215], 'A = π (D² − d_r²) / 4', ink.mark, 'middle'),
        words([280, 240], 'oil on the rod side; the rod pulls', ink.mark, 'middle'),
      ],
      560,
      260,
    ),
  );
}

for (const draw of [
  proofStrength,
  yieldPoints,
  considere,
  fitModulus,
  elongationAfterFracture,
  bridgmanCorrection,
  flexuralStress,
  brinellHardness,
  pistonArea,
])
  draw();

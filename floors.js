/** The floors of src/, lowest first: a floor imports only from floors below it, through their index.ts. */
export const floors =
  'base units numeric geometry piece force record curve hardening materials uncertainty statistics methods planning vectors simulate teaching languages report render files cli'.split(
    ' ',
  );

/** Folders that nobody outside imports, so they have no subpath. */
const inner = ['numeric', 'cli'];
export const subpaths = floors.filter((floor) => !inner.includes(floor));
export const doors = [...subpaths.map((name) => `src/${name}/index.ts`), 'src/index.ts'];

/** Folders that stand beside the road: nothing of src imports them but the command, and teaching what it simulates. */
const beside = { simulate: ['cli', 'teaching'], teaching: ['cli'] };

const shutDoor = "A floor's only door is its index.js.";
const door = { regex: '^\\.\\./(?![^/]+/index\\.js$|\\.\\./vectors/)', message: shutDoor };
const self = { regex: '^\\./index\\.js$|^testpiece(/|$)', message: 'Name the file itself.' };
/** A large floor has rooms, one level of them: their files know each other, and other floors by their doors. */
const roomDoor = { regex: '^\\.\\./\\.\\./(?![^/]+/index\\.js$)|^\\.\\./(?!\\.\\./)[^/]+/.*/', message: shutDoor };
const roomSelf = { regex: '^\\.\\.?/index\\.js$|^testpiece(/|$)', message: 'Name the file itself.' };
const forbid = (files, patterns) => ({ files: [files], rules: { 'no-restricted-imports': ['error', { patterns }] } });

export const floorRules = [
  forbid('src/index.ts', [{ ...door, regex: '^(?!\\./[^/]+/index\\.js$)' }]),
  ...floors.flatMap((floor, i) => {
    const shut = Object.keys(beside).filter((name) => !beside[name].includes(floor));
    const closed = [...floors.slice(i + 1), ...shut].join('|') || '(?!)';
    const below = (up) => ({ regex: `^${up}(${closed})/`, message: `${floor}/ imports only from floors below it.` });
    return [
      forbid(`src/${floor}/*`, [door, self, below('\\.\\./')]),
      forbid(`src/${floor}/*/**`, [roomDoor, roomSelf, below('\\.\\./\\.\\./')]),
    ];
  }),
  // `import()` would slip past the rule above; optional libraries are loaded that way on purpose, in render/ and files/ alone
  {
    files: ['src/**'],
    ignores: ['src/cli/**', 'src/render/**', 'src/files/**'],
    rules: { 'no-restricted-syntax': ['error', 'ImportExpression', 'TSImportType'] },
  },
];

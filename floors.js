/** The floors of src/, lowest first: a floor imports only from floors below it, through their index.ts. */
export const floors =
  'base units numeric geometry piece force record curve hardening materials uncertainty statistics methods planning vectors simulate teaching languages report render files cli'.split(
    ' ',
  );

/**
 * The rooms of the large floors, lowest first: a room imports only from rooms before it, and the files that stand beside the rooms from none.
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const rooms = {
  record: 'survey reading checks repairs'.split(' '),
  curve: 'window yield modulus frame beam rates'.split(' '),
  hardening: 'true laws fits necking sheet'.split(' '),
  methods:
    'common loading evaluation budgets tension variations compression bending shear brinell cupping unloading results replicates'.split(
      ' ',
    ),
  report: 'words figures pages'.split(' '),
};

/** Folders that nobody outside imports, so they have no subpath. */
const inner = ['numeric', 'cli'];
export const subpaths = floors.filter((floor) => !inner.includes(floor));
export const doors = [...subpaths.map((name) => `src/${name}/index.ts`), 'src/index.ts'];

/** Folders that stand beside the road: nothing of src imports them but the command; teaching what it simulates, and languages the names and keys of teaching. */
const beside = { simulate: ['cli', 'teaching'], teaching: ['languages', 'cli'] };

const shutDoor = "A floor's only door is its index.js.";
const door = { regex: '^\\.\\./(?![^/]+/index\\.js$|\\.\\./vectors/)', message: shutDoor };
const self = { regex: '^\\./index\\.js$|^testpiece(/|$)', message: 'Name the file itself.' };
/** Rooms are one level deep: their files name each other, and know other floors by their doors. */
const roomDoor = { regex: '^\\.\\./\\.\\./(?![^/]+/index\\.js$)|^\\.\\./(?!\\.\\./)[^/]+/.*/', message: shutDoor };
const roomSelf = { regex: '^\\.\\.?/index\\.js$|^testpiece(/|$)', message: 'Name the file itself.' };
const closed = (up, names, message) => ({ regex: `^${up}(${names.join('|') || '(?!)'})/`, message });
const forbid = (files, patterns) => ({ files: [files], rules: { 'no-restricted-imports': ['error', { patterns }] } });

export const floorRules = [
  forbid('src/index.ts', [{ ...door, regex: '^(?!\\./[^/]+/index\\.js$)' }]),
  ...floors.flatMap((floor, i) => {
    const shut = Object.keys(beside).filter((name) => !beside[name].includes(floor));
    const own = rooms[floor] ?? [];
    const below = (up) => closed(up, [...floors.slice(i + 1), ...shut], `${floor}/ imports only from floors below it.`);
    const before = (k) => closed('\\.\\./', own.slice(k + 1), `${floor}/${own[k]}/ imports only from rooms before it.`);
    return [
      forbid(`src/${floor}/*`, [door, self, below('\\.\\./'), closed('\\./', own, 'Rooms stand above the files beside them.')]),
      forbid(`src/${floor}/index.ts`, [door, self, below('\\.\\./')]),
      ...own.map((room, k) => forbid(`src/${floor}/${room}/**`, [roomDoor, roomSelf, below('\\.\\./\\.\\./'), before(k)])),
    ];
  }),
  // `import()` would slip past the rule above; optional libraries are loaded that way on purpose, in render/ and files/ alone
  {
    files: ['src/**'],
    ignores: ['src/cli/**', 'src/render/**', 'src/files/**'],
    rules: { 'no-restricted-syntax': ['error', 'ImportExpression', 'TSImportType'] },
  },
];

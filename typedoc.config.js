import katex from '@vscode/markdown-it-katex';
import { doors } from './floors.js';

export default {
  name: 'testpiece: the formula book',
  entryPoints: doors, // the root last: pages belong to their folder
  tsconfig: 'tsconfig.json',
  out: 'site',
  projectDocuments: ['docs/*.md', 'test/handbook/SOURCES.md'],
  includeHierarchySummary: false, // its page has no anchor for a class with one base
  searchInComments: true,
  searchInDocuments: true,
  searchGroupBoosts: { Functions: 3, Documents: 2 },
  plugin: ['./tools/typedoc-plugin.js'],
  markdownItLoader: (md) => md.use(katex.default ?? katex, { throwOnError: true, strict: 'error', trust: false }),
  validation: { notExported: true, invalidLink: true, notDocumented: true },
  treatWarningsAsErrors: true,
  intentionallyNotExported: [
    'entries',
    'sentences',
    'families',
    'ofRounds',
    'ofSections',
    'ofLengths',
    'ofForces',
    'ofPressures',
    'ofStrains',
    'ofExtensions',
  ],
  excludeInternal: true,
  disableGit: true,
  sourceLinkTemplate: 'src/{path}#L{line}',
};

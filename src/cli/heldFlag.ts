import { Option } from 'commander';

/** The flag that says which force was brought to its steps. */
export const heldOption = (description: string): Option => new Option('--held <which>', description).choices(['true', 'indicated']);

/** What a caution speaks of; one caution each. */
export type CautionTag =
  | 'force'
  | 'guard'
  | 'brittle'
  | 'extensometer'
  | 'grips'
  | 'platens'
  | 'column'
  | 'tool'
  | 'span'
  | 'shear'
  | 'ball'
  | 'blank'
  | 'limits'
  | 'oil'
  | 'drive'
  | 'edges'
  | 'alloys'
  | 'heavy'
  | 'wiring'
  | 'decisions';

/** A caution: one or two sentences, and what they speak of. */
export interface Caution {
  /** What it speaks of. */
  readonly tag: CautionTag;
  /** The sentences. */
  readonly text: string;
}

/**
 * What must be said where metals are loaded until they give way, in our own words; local codes and licensed practice come first.
 *
 * @remarks
 * Usual cautions of the trade, in the order of the work. {@link cautionsFor} chooses those of a test.
 */
export const cautions: readonly Caution[] = [
  {
    tag: 'force',
    text: 'Close the guard and wear eye protection before any force is applied; stand aside of the line of loading. The frame, the oil and the hoses release stored energy when a piece gives way; a printed energy is a least value.',
  },
  { tag: 'guard', text: 'Never open the guard or reach past it under load; read dials from outside.' },
  { tag: 'brittle', text: 'Hard, brittle and notched pieces throw fragments, without warning.' },
  {
    tag: 'extensometer',
    text: 'Take an extensometer off only at a load at which your procedure allows it; measure necks unloaded or optically.',
  },
  { tag: 'grips', text: 'Keep hands out of the grips while they close and while the piece is pulled straight.' },
  {
    tag: 'platens',
    text: 'Keep hands out from between the platens. A piece under pressure that is not square or not central can shoot out sideways.',
  },
  { tag: 'column', text: 'A slender piece buckles suddenly and springs out; no computed buckling force is a safe load.' },
  {
    tag: 'tool',
    text: 'Keep hands out of the tool, and from between it and the piece, while it closes; set the piece only while the drive stands still and without force.',
  },
  { tag: 'span', text: 'A bent bar can slip off its supports or spring back when it is released; a hard one breaks in two that fly.' },
  { tag: 'shear', text: 'A sheared pin or blank is driven out of the tool: put something in its way that catches it, and stand aside.' },
  {
    tag: 'ball',
    text: 'Balls and hard pieces can shatter under the force: guard closed, eyes protected, and no ball that is chipped or cracked.',
  },
  { tag: 'blank', text: 'Blanks have sharp edges and the cup a torn one; unload fully before the clamp is opened.' },
  {
    tag: 'limits',
    text: 'Stay within the capacity, the stroke and the range of the grips and tools; never defeat or raise the relief valve. Where a piece does not give way at the highest force allowed, release the pressure and do not approach before it is gone.',
  },
  {
    tag: 'oil',
    text: 'Release the pressure fully before opening a fitting or the guard: a jet of oil can enter the skin and is a medical emergency. Oil may be hot, and on the floor it makes one slip.',
  },
  {
    tag: 'drive',
    text: 'The drive can move by itself at fracture or release: follow the instructions of the frame; no loose sleeves, long hair or gloves near it.',
  },
  { tag: 'edges', text: 'Broken edges are sharp, and the broken place may be hot.' },
  { tag: 'alloys', text: 'Chips and dust of magnesium, titanium and beryllium alloys are hazards of their own: fire, or poison.' },
  { tag: 'heavy', text: 'Platens, tools and blanks are heavy: lift them with help or gear, and fix the frame to its bench.' },
  { tag: 'wiring', text: 'Switch the power off before work on the transmitter, its wiring or the drive.' },
  {
    tag: 'decisions',
    text: 'These results describe these test pieces. They are not design values. Decisions about structures, pressure equipment, lifting, aircraft or medical use follow the governing code and a licensed or otherwise authorised professional; acceptance needs a verified machine, an extensometer where one is required, and a competent laboratory. Local law, codes and the rules of the workshop come before anything said here.',
  },
];

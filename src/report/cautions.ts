/** @internal What must be said with a tension test, in our own words; local codes and licensed practice come first. */
export const tensionCautions: readonly string[] = [
  'Close the guard and wear eye protection before any force is applied; stand aside of the line of loading. Hard, brittle and notched pieces throw fragments, and the frame, the oil and the hoses release stored energy at fracture.',
  'Never reach past the guard under load. Take an extensometer off only at a load at which your procedure allows it; measure necks unloaded or optically.',
  'Stay within the capacity, the stroke and the grip range of the frame; never defeat the relief valve. Release the pressure fully before opening a fitting: a jet of oil can enter the skin and is a medical emergency.',
  'The drive can move by itself at fracture or release: follow the instructions of the frame; no loose sleeves, long hair or gloves near it.',
  'Broken edges are sharp and may be hot; chips and dust of magnesium, titanium and beryllium alloys are hazards of their own.',
  'These results describe these test pieces. They are not design values. Decisions about structures, pressure equipment, lifting, aircraft or medical use follow the governing code and a licensed or otherwise authorised professional; acceptance needs a verified machine, an extensometer where one is required, and a competent laboratory.',
];

const [guard, reach, capacity, drive, edges, results] = tensionCautions;

/** @internal What must be said with tests between plates and on supports. */
export const bentAndPressedCautions: readonly string[] = [
  guard!,
  'Pieces between plates or on supports are held by nothing but the load: slender and slanting ones shoot out sideways, bent ones spring off, hard ones shatter. Keep hands out from between plates, noses and supports at all times.',
  reach!,
  capacity!,
  drive!,
  edges!,
  results!,
];

/** Words for a run with rising and with falling force, in a heading or a cell; accents and capitals do not count. */
const rising =
  /(^|[^a-z])(up|upwards?|rising|increasing|loading|auf|aufwarts|steigend|belastung|montee|croissante?|charge|subida|ascendente|creciente|carga)([^a-z]|$)|↑|上升|递增|升程|进程|加载/;
const falling =
  /(^|[^a-z])(down|downwards?|falling|decreasing|unloading|ab|abwarts|fallend|entlastung|descente|decroissante?|decharge|bajada|descendente|decreciente|descarga)([^a-z]|$)|↓|下降|递减|降程|回程|卸载/;

/** Which way the force went, by a heading or a cell; undefined where it does not say. */
export function runDirection(text: string): 'rising' | 'falling' | undefined {
  const plain = text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return falling.test(plain) ? 'falling' : rising.test(plain) ? 'rising' : undefined;
}

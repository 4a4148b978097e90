/** CRC-32 of bytes (ISO 3309). */
function crc32(bytes: Uint8Array): number {
  let crc = ~0;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return ~crc >>> 0;
}

/** Files as a zip archive without compression. */
export function zipped(files: Readonly<Record<string, string>>): Uint8Array {
  const parts: number[] = [];
  const central: number[] = [];
  const number = (value: number, size: number): number[] => Array.from({ length: size }, (_, k) => (value >>> (8 * k)) & 255);
  for (const [name, text] of Object.entries(files)) {
    const data = new TextEncoder().encode(text);
    const title = new TextEncoder().encode(name);
    const sizes = [...number(crc32(data), 4), ...number(data.length, 4), ...number(data.length, 4), ...number(title.length, 2), 0, 0];
    const common = [20, 0, 0, 0, 0, 0, 0, 0, 33, 0, ...sizes];
    central.push(...number(0x02014b50, 4), 20, 0, ...common, ...Array<number>(10).fill(0), ...number(parts.length, 4), ...title);
    parts.push(...number(0x04034b50, 4), ...common, ...title, ...data);
  }
  const count = number(Object.keys(files).length, 2);
  const end = [...number(0x06054b50, 4), 0, 0, 0, 0, ...count, ...count, ...number(central.length, 4), ...number(parts.length, 4), 0, 0];
  return Uint8Array.from([...parts, ...central, ...end]);
}

/** A sheet of a spreadsheet as an .xlsx file: numbers, text, nothing, and cells that are written as they are given (`raw`). */
export function workbook(sheets: Readonly<Record<string, readonly (readonly (number | string | null | { raw: string })[])[]>>): Uint8Array {
  const xml = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const packages = 'http://schemas.openxmlformats.org/package/2006';
  const names = Object.keys(sheets);
  const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  const cell = (value: number | string | { raw: string }, at: string): string =>
    typeof value === 'number'
      ? `<c r="${at}"><v>${value}</v></c>`
      : typeof value === 'string'
        ? `<c r="${at}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`
        : `<c r="${at}" ${value.raw}</c>`;
  const sheet = (rows: (typeof sheets)[string]): string =>
    `${xml}<worksheet xmlns="${main}"><sheetData>${rows
      .map(
        (row, i) =>
          `<row r="${i + 1}">${row.map((value, k) => (value === null ? '' : cell(value, `${String.fromCharCode(65 + k)}${i + 1}`))).join('')}</row>`,
      )
      .join('')}</sheetData></worksheet>`;
  return zipped({
    '[Content_Types].xml': `${xml}<Types xmlns="${packages}/content-types"><Default Extension="xml" ContentType="application/xml"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/></Types>`,
    '_rels/.rels': `${xml}<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${xml}<workbook xmlns="${main}" xmlns:r="${relations}"><sheets>${names.map((name, k) => `<sheet name="${name}" sheetId="${k + 1}" r:id="rId${k + 1}"/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${xml}<Relationships xmlns="${packages}/relationships">${names.map((_, k) => `<Relationship Id="rId${k + 1}" Type="${relations}/worksheet" Target="worksheets/sheet${k + 1}.xml"/>`).join('')}<Relationship Id="rId99" Type="${relations}/styles" Target="styles.xml"/></Relationships>`,
    'xl/styles.xml': `${xml}<styleSheet xmlns="${main}"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="16" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    ...Object.fromEntries(names.map((name, k) => [`xl/worksheets/sheet${k + 1}.xml`, sheet(sheets[name]!)])),
  });
}

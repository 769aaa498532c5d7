/** Turns character offsets of a text into byte offsets and lines. */
export interface TextPlaces {
  /** Byte offset in UTF-8 of a character offset. */
  byteOffset(character: number): number;
  /** 1-based line of a character offset. */
  line(character: number): number;
}

/** Tables for one text; both questions are then answered without reading the text again. */
export function textPlaces(text: string): TextPlaces {
  const bytes = new Uint32Array(text.length + 1);
  const lines = new Uint32Array(text.length + 1);
  let count = 0;
  let line = 1;
  for (let at = 0; at < text.length; at++) {
    bytes[at] = count;
    lines[at] = line;
    const unit = text.charCodeAt(at);
    // A pair of surrogates makes four bytes: two are counted for each half.
    count += unit < 0x80 ? 1 : unit < 0x800 || (unit >= 0xd800 && unit < 0xe000) ? 2 : 3;
    if (unit === 0x0a) line++;
  }
  bytes[text.length] = count;
  lines[text.length] = line;
  const inside = (character: number): number => Math.max(0, Math.min(character, text.length));
  return {
    byteOffset: (character) => bytes[inside(character)],
    line: (character) => lines[inside(character)],
  };
}

/** Says in a PNG file how large it is to be printed. */

const DOTS_PER_INCH = 300;
/** Signature and header come first; what says the size stands behind them. */
const BEHIND_HEADER = 33;

/** The same picture, to be printed at 300 dots an inch. */
export async function printable(blob: Blob): Promise<Blob> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const chunk = new DataView(new ArrayBuffer(21));
  const each = Math.round(DOTS_PER_INCH / 0.0254);
  chunk.setUint32(0, 9);
  for (const [index, sign] of [..."pHYs"].entries()) chunk.setUint8(4 + index, sign.charCodeAt(0));
  chunk.setUint32(8, each);
  chunk.setUint32(12, each);
  // Dots a metre.
  chunk.setUint8(16, 1);
  chunk.setUint32(17, check(new Uint8Array(chunk.buffer, 4, 13)));
  return new Blob([bytes.subarray(0, BEHIND_HEADER), chunk.buffer, bytes.subarray(BEHIND_HEADER)], { type: "image/png" });
}

/** The check sum of a chunk (CRC-32, as the PNG specification defines it). */
function check(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

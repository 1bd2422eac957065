import { crc32, deflateSync } from "node:zlib";

/** One pixel: red, green, blue and cover, each 0 to 255. */
export type Pixel = readonly [number, number, number, number];

/** A square picture as a PNG file (ISO/IEC 15948): 8 bits a channel with alpha, no filter, one IDAT. */
export function png(size: number, pixel: (x: number, y: number) => Pixel): Buffer {
  const lines = Array.from({ length: size }, (_, y) => [
    0,
    ...Array.from({ length: size }, (__, x) => pixel(x, y)).flat(),
  ]);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(Buffer.from(lines.flat()), { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  framed.set(body, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

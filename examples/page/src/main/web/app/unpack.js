// Packed parts of the page: the engine as LZMA, what is short as gzip, both written in letters.

/**
 * Bytes that are written as letters, 13 bits in two of 91; in front stands their count. Stands for
 * itself, as a worker is made of it.
 */
const lettersToBytes = text => {
  const letters = [...Array(94).keys()].map(i => String.fromCharCode(33 + i)).filter(c => !'<"\\'.includes(c));
  const value = new Uint8Array(128);
  letters.forEach((letter, i) => {
    value[letter.charCodeAt(0)] = i;
  });
  const packed = text.trim();
  const space = packed.indexOf(' ');
  const bytes = new Uint8Array(Number(packed.slice(0, space)));
  let held = 0;
  let count = 0;
  let at = 0;
  for (let i = space + 1; i < packed.length; i += 2) {
    held |= (value[packed.charCodeAt(i)] + 91 * value[packed.charCodeAt(i + 1)]) << count;
    for (count += 13; count >= 8 && at < bytes.length; count -= 8) {
      bytes[at++] = held & 255;
      held >>>= 8;
    }
  }
  if (at < bytes.length) {
    throw new Error('a part of this page is cut off');
  }
  return bytes;
};

/**
 * Unpacks LZMA with its header of 13 bytes, as the open specification of the format has it: a
 * range decoder of bits whose chances are learnt, literals, and matches at one of the last four
 * distances or a new one. Stands for itself, as a worker is made of it.
 */
const unpackLzma = packed => {
  const [literalBits, placeBits, posBits] =
    [packed[0] % 9, Math.floor(packed[0] / 9) % 5, Math.floor(packed[0] / 45)];
  const size = packed[5] + packed[6] * 256 + packed[7] * 65536 + packed[8] * 16777216;
  // Where the chances of each kind of choice begin.
  const [MATCH, REP, REP0, REP1, REP2, LONG, SLOT, SPECIAL, ALIGN, LENGTH, AGAIN, LITERAL] =
    [0, 192, 204, 216, 228, 240, 432, 688, 803, 819, 1333, 1847];
  const chances = new Uint16Array(LITERAL + (768 << (literalBits + placeBits))).fill(1024);
  const out = new Uint8Array(size);
  let at = 18;
  let range = 4294967295;
  let code = packed[14] * 16777216 + packed[15] * 65536 + packed[16] * 256 + packed[17];

  const wide = () => {
    if (range < 16777216) {
      range *= 256;
      code = code * 256 + packed[at++];
    }
  };
  const bit = i => {
    const bound = (range >>> 11) * chances[i];
    const is = code < bound ? 0 : 1;
    if (is === 0) {
      range = bound;
      chances[i] += (2048 - chances[i]) >> 5;
    } else {
      range -= bound;
      code -= bound;
      chances[i] -= chances[i] >> 5;
    }
    wide();
    return is;
  };
  const tree = (base, bits) => {
    let node = 1;
    for (let i = 0; i < bits; i++) {
      node = node * 2 + bit(base + node);
    }
    return node - (1 << bits);
  };
  const lowFirst = (base, bits) => {
    let node = 1;
    let value = 0;
    for (let i = 0; i < bits; i++) {
      const is = bit(base + node);
      node = node * 2 + is;
      value += is << i;
    }
    return value;
  };
  const plain = bits => {
    let value = 0;
    for (let i = 0; i < bits; i++) {
      range >>>= 1;
      const is = code < range ? 0 : 1;
      code -= is * range;
      value = value * 2 + is;
      wide();
    }
    return value;
  };
  const length = (base, pos) => (bit(base) === 0 ? tree(base + 2 + pos * 8, 3)
    : bit(base + 1) === 0 ? 8 + tree(base + 130 + pos * 8, 3) : 16 + tree(base + 258, 8));
  const distance = count => {
    const slot = tree(SLOT + Math.min(count, 3) * 64, 6);
    if (slot < 4) {
      return slot;
    }
    const bits = (slot >> 1) - 1;
    const begin = (2 + slot % 2) * 2 ** bits;
    return slot < 14 ? begin + lowFirst(SPECIAL + begin - slot, bits)
      : begin + plain(bits - 4) * 16 + lowFirst(ALIGN, 4);
  };

  let state = 0;
  let last = [0, 0, 0, 0];
  let made = 0;
  const literal = () => {
    const before = made > 0 ? out[made - 1] : 0;
    const base = LITERAL
      + 768 * (((made & ((1 << placeBits) - 1)) << literalBits) + (before >> (8 - literalBits)));
    let symbol = 1;
    if (state >= 7) {
      let likely = out[made - last[0] - 1];
      let same = true;
      while (same && symbol < 256) {
        const high = likely >> 7;
        likely = (likely << 1) & 255;
        const is = bit(base + 256 + high * 256 + symbol);
        symbol = symbol * 2 + is;
        same = is === high;
      }
    }
    while (symbol < 256) {
      symbol = symbol * 2 + bit(base + symbol);
    }
    out[made++] = symbol;
    state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
  };
  /** Gives how long a match is, and puts its distance first among the last ones. */
  const match = pos => {
    if (bit(REP + state) === 0) {
      const count = length(LENGTH, pos);
      state = state < 7 ? 7 : 10;
      last = [distance(count), last[0], last[1], last[2]];
      return count + 2;
    }
    if (bit(REP0 + state) === 0) {
      if (bit(LONG + state * 16 + pos) === 0) {
        state = state < 7 ? 9 : 11;
        return 1;
      }
    } else {
      const which = bit(REP1 + state) === 0 ? 1 : 2 + bit(REP2 + state);
      last.unshift(...last.splice(which, 1));
    }
    const count = length(AGAIN, pos);
    state = state < 7 ? 8 : 11;
    return count + 2;
  };

  while (made < size && at <= packed.length) {
    const pos = made & ((1 << posBits) - 1);
    if (bit(MATCH + state * 16 + pos) === 0) {
      literal();
    } else {
      const end = Math.min(size, made + match(pos));
      for (const back = last[0] + 1; made < end; made++) {
        out[made] = out[made - back];
      }
    }
  }
  if (made < size || at > packed.length) {
    throw new Error('a part of this page is broken');
  }
  return out;
};

/** Unpacks gzip by the browser's own means. */
const gunzip = bytes =>
  new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).text();

/** The text of a short part of the page. */
const textOfPart = id => gunzip(lettersToBytes(byId(id).textContent));

/** Unpacks a long part beside the page, which stays alive. Gives its bytes. */
const unpackBeside = id => new Promise((settle, refuse) => {
  const source = `'use strict';const lettersToBytes=${lettersToBytes};const unpackLzma=${unpackLzma};`
    + 'onmessage=event=>{const bytes=unpackLzma(lettersToBytes(event.data));postMessage(bytes,[bytes.buffer])}';
  const url = URL.createObjectURL(new Blob([source], {type: 'text/javascript'}));
  const worker = new Worker(url);
  const end = () => {
    worker.terminate();
    URL.revokeObjectURL(url);
  };
  worker.onmessage = event => {
    end();
    settle(event.data);
  };
  worker.onerror = event => {
    event.preventDefault();
    end();
    refuse(new Error(event.message || 'it could not be started'));
  };
  worker.postMessage(byId(id).textContent);
});

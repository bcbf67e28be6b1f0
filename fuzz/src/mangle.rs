//! Bytes changed at random places: flipped, cut out, doubled, put in, exchanged for what often goes wrong.

use fastrand::Rng;

/// What often goes wrong in texts and in files of pictures.
const TOKENS: [&[u8]; 24] = [
    b"0",
    b"-1",
    b"999",
    b"1000000",
    b"1e999",
    b"NaN",
    b"\"",
    b"[",
    b"]",
    b"{",
    b"}",
    b"=",
    b"\n",
    b"\0",
    b"\xff\xff\xff\xff",
    b"\x00\x00\x00\x00",
    b"\x7f\xff\xff\xff",
    b"\xef\xbb\xbf",
    b"\xe2\x80\xae",
    b"../",
    b"[[note]]",
    b"\"\"\"",
    b" mm",
    b" 1/0",
];

/// The bytes with one to eight changes.
pub fn mangled(bytes: &[u8], rng: &mut Rng) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    for _ in 0..rng.u32(1..=8) {
        change(&mut bytes, rng);
    }
    bytes
}

fn change(bytes: &mut Vec<u8>, rng: &mut Rng) {
    let at = rng.usize(..=bytes.len());
    let to = (at + rng.usize(..=40)).min(bytes.len());
    match rng.u32(..7) {
        0 => drop(bytes.drain(at..to)),
        1 => {
            let piece = bytes[at..to].to_vec();
            let by = rng.usize(..=bytes.len());
            bytes.splice(by..by, piece);
        }
        2 | 3 => {
            let token = TOKENS[rng.usize(..TOKENS.len())];
            let over = if rng.bool() { at } else { (at + token.len()).min(bytes.len()) };
            bytes.splice(at..over, token.iter().copied());
        }
        4 => bytes.truncate(at.max(1)),
        _ => {
            if let Some(byte) = bytes.get_mut(at) {
                *byte = if rng.bool() { *byte ^ (1 << rng.u32(..8)) } else { rng.u8(..) };
            }
        }
    }
}

//! How server and worker speak to each other: a head in JSON and a body of any bytes, each after its
//! length in four bytes, the lowest first.

use std::io::{self, Read, Write};

use serde::Serialize;
use serde::de::DeserializeOwned;
use tokio::io::{AsyncRead, AsyncReadExt, AsyncWrite, AsyncWriteExt};

/// Neither head nor body is longer, in bytes: far more than the largest picture.
const LONGEST: usize = 512 * 1024 * 1024;

/// A head and a body.
pub(super) type Frame<T> = (T, Vec<u8>);

fn opening(head: &impl Serialize, body: &[u8]) -> io::Result<Vec<u8>> {
    let head = serde_json::to_vec(head)?;
    let mut opening = Vec::with_capacity(8 + head.len());
    for part in [&head[..], body] {
        let length = u32::try_from(part.len()).ok().filter(|length| *length as usize <= LONGEST);
        opening.extend(length.ok_or(io::ErrorKind::FileTooLarge)?.to_le_bytes());
    }
    opening.extend(head);
    Ok(opening)
}

fn lengths(opening: [u8; 8]) -> io::Result<(usize, usize)> {
    let [a, b, c, d, e, f, g, h] = opening;
    let [head, body] = [[a, b, c, d], [e, f, g, h]].map(|length| u32::from_le_bytes(length) as usize);
    if head > LONGEST || body > LONGEST { Err(io::ErrorKind::InvalidData.into()) } else { Ok((head, body)) }
}

fn parted<T: DeserializeOwned>(mut bytes: Vec<u8>, head: usize) -> io::Result<Frame<T>> {
    let body = bytes.split_off(head);
    Ok((serde_json::from_slice(&bytes)?, body))
}

/// Writes a frame.
pub(super) fn write(out: &mut impl Write, head: &impl Serialize, body: &[u8]) -> io::Result<()> {
    out.write_all(&opening(head, body)?)?;
    out.write_all(body)?;
    out.flush()
}

/// Reads a frame.
pub(super) fn read<T: DeserializeOwned>(source: &mut impl Read) -> io::Result<Frame<T>> {
    let mut opening = [0; 8];
    source.read_exact(&mut opening)?;
    let (head, body) = lengths(opening)?;
    let mut bytes = vec![0; head + body];
    source.read_exact(&mut bytes)?;
    parted(bytes, head)
}

/// Sends a frame.
pub(super) async fn send(
    out: &mut (impl AsyncWrite + Unpin),
    head: &impl Serialize,
    body: &[u8],
) -> io::Result<()> {
    out.write_all(&opening(head, body)?).await?;
    out.write_all(body).await?;
    out.flush().await
}

/// Receives a frame.
pub(super) async fn receive<T: DeserializeOwned>(
    source: &mut (impl AsyncRead + Unpin),
) -> io::Result<Frame<T>> {
    let mut opening = [0; 8];
    source.read_exact(&mut opening).await?;
    let (head, body) = lengths(opening)?;
    let mut bytes = vec![0; head + body];
    source.read_exact(&mut bytes).await?;
    parted(bytes, head)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read() {
        let mut bytes = Vec::new();
        write(&mut bytes, &"head", b"body").unwrap();
        write(&mut bytes, &7, b"").unwrap();
        let mut source = &bytes[..];
        assert_eq!(read::<String>(&mut source).unwrap(), ("head".to_owned(), b"body".to_vec()));
        assert_eq!(read::<u32>(&mut source).unwrap(), (7, Vec::new()));
        assert_eq!(read::<u32>(&mut source).unwrap_err().kind(), io::ErrorKind::UnexpectedEof);
    }

    #[test]
    fn absurd_lengths_are_refused_before_room_is_made() {
        let bytes = [0xff; 8];
        assert_eq!(read::<u32>(&mut &bytes[..]).unwrap_err().kind(), io::ErrorKind::InvalidData);
    }
}

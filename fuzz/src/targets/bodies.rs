//! Bodies that are sent to the bench, mangled.

use std::fmt::Write as _;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use fastrand::Rng;
use serde_json::json;
use tempfile::TempDir;

use super::patterns;
use crate::extreme;
use crate::mangle::mangled;
use crate::runner::Target;

/// Where bodies are sent to, with what belongs into one beside the pattern.
const ROUTES: [(&str, &str); 6] = [
    ("look", "{}"),
    ("picture", r#"{ "stage": "half-woven", "detail": "thumbnail" }"#),
    ("drawing", r#"{ "name": "section", "language": "de" }"#),
    ("chart", r#"{ "face": "inside" }"#),
    ("edit", r#"{ "edits": [{ "path": "staves.count", "value": "67" }] }"#),
    ("compare", r#"{ "left": "", "right": "" }"#),
];

/// A bench with a folder of its own.
pub(super) struct Bodies {
    child: Child,
    address: SocketAddr,
    corpus: Vec<String>,
    // Gone when this is dropped.
    _room: TempDir,
}

impl Bodies {
    pub(super) fn over(program: &Path) -> io::Result<Self> {
        let room = tempfile::tempdir()?;
        let mut child = Command::new(program)
            .arg("bench")
            .arg(room.path())
            .arg("--no-open")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()?;
        let out = child.stdout.take().ok_or_else(|| io::Error::other("no standard output"))?;
        let address = BufReader::new(out).lines().find_map(|line| {
            let line = line.ok()?;
            let host = line.split("http://").nth(1)?.split('/').next()?.trim().to_owned();
            host.parse().ok()
        });
        let address = address.ok_or_else(|| io::Error::other("the bench does not say where it listens"))?;
        let texts = patterns()?.into_iter().map(|bytes| String::from_utf8_lossy(&bytes).into_owned());
        let corpus = texts.chain((100..110).map(extreme::pattern)).collect();
        Ok(Self { child, address, corpus, _room: room })
    }

    /// Sends a request and reads the status of its answer.
    fn status(&self, head: &str, body: &[u8]) -> io::Result<u16> {
        let mut stream = TcpStream::connect(self.address)?;
        stream.set_read_timeout(Some(Duration::from_mins(1)))?;
        stream.write_all(head.as_bytes())?;
        // A bench that refuses early may close before all is sent.
        let _ = stream.write_all(body);
        let mut answer = Vec::new();
        match stream.read_to_end(&mut answer) {
            Err(error) if error.kind() != io::ErrorKind::ConnectionReset => return Err(error),
            _ => {}
        }
        let text = String::from_utf8_lossy(&answer[..answer.len().min(64)]).into_owned();
        Ok(text.split(' ').nth(1).and_then(|status| status.parse().ok()).unwrap_or(0))
    }

    fn head(&self, first: &str, length: usize) -> String {
        let host = self.address;
        let mut head = format!("{first} HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\n");
        let _ = write!(
            head,
            "Content-Type: application/json\r\nContent-Length: {length}\r\nConnection: close\r\n\r\n"
        );
        head
    }
}

impl Target for Bodies {
    fn name(&self) -> &'static str {
        "bodies"
    }

    /// The route in a line, then the body.
    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        let (route, more) = ROUTES[rng.usize(..ROUTES.len())];
        let source = &self.corpus[rng.usize(..self.corpus.len())];
        let mut body: serde_json::Value = serde_json::from_str(more).unwrap_or_default();
        body["source"] = json!(if rng.bool() {
            String::from_utf8_lossy(&mangled(source.as_bytes(), rng)).into_owned()
        } else {
            source.clone()
        });
        let bytes = body.to_string().into_bytes();
        let bytes = if rng.bool() { mangled(&bytes, rng) } else { bytes };
        [route.as_bytes(), b"\n", &bytes].concat()
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        let end = case.iter().position(|byte| *byte == b'\n').unwrap_or(case.len());
        let (route, body) =
            (String::from_utf8_lossy(&case[..end]).into_owned(), &case[(end + 1).min(case.len())..]);
        let head = self.head(&format!("POST /api/{route}"), body.len());
        let status = self.status(&head, body).map_err(|error| error.to_string())?;
        if !(200..500).contains(&status) {
            return Err(format!("{route} answers {status}"));
        }
        let health = self.status(&self.head("GET /api/health", 0), b"").map_err(|error| error.to_string())?;
        if health == 200 { Ok(()) } else { Err(format!("the bench answers {health} after that")) }
    }
}

impl Drop for Bodies {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

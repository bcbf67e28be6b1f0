//! A bench of its own for each test, and a client that sends what it is told to, right or wrong.

#![allow(dead_code, reason = "each test file uses its part")]

use std::fmt::Write as _;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use serde_json::Value;
use socket2::{Domain, Socket, Type};
use tempfile::TempDir;

const PROGRAM: &str = env!("CARGO_BIN_EXE_stavewright");

/// A served bench; it is stopped when it is dropped.
pub struct Served {
    child: Child,
    /// Where it listens.
    pub address: SocketAddr,
    /// What it said on the terminal.
    pub said: String,
    folder: PathBuf,
    room: Option<TempDir>,
}

/// An answer.
pub struct Answer {
    /// Its status code.
    pub status: u16,
    /// Its head, in small letters.
    pub head: String,
    /// Its body.
    pub body: Vec<u8>,
}

impl Answer {
    /// The body as JSON.
    pub fn json(&self) -> Value {
        serde_json::from_slice(&self.body).unwrap_or_else(|error| panic!("{error}: {}", self.text()))
    }
    /// The body as text.
    pub fn text(&self) -> String {
        String::from_utf8_lossy(&self.body).into_owned()
    }
    /// A refusal says what, where and how to mend it.
    pub fn assert_refused(&self, status: u16) {
        assert_eq!(self.status, status, "{}", self.text());
        let fault = self.json();
        for key in ["what", "where", "how_to_mend"] {
            assert!(fault[key].is_string(), "{key} in {fault}");
        }
        assert_ne!(fault["what"], "", "{fault}");
    }
}

impl Served {
    /// A bench over a new folder that holds the harbour basket.
    pub fn start() -> Self {
        Self::with(&[])
    }

    /// The same with more arguments.
    pub fn with(arguments: &[&str]) -> Self {
        let room = tempfile::tempdir().unwrap();
        let folder = room.path().join("patterns");
        std::fs::create_dir(&folder).unwrap();
        std::fs::write(folder.join("harbour.toml"), harbour()).unwrap();
        let mut bench = Self::over(&folder, arguments);
        bench.room = Some(room);
        bench
    }

    /// A bench over a folder that is there already.
    pub fn over(folder: &Path, arguments: &[&str]) -> Self {
        Self::by(Command::new(PROGRAM).arg("bench").args(arguments), folder)
    }

    /// The same, by a command that starts the program in its own way.
    pub fn by(command: &mut Command, folder: &Path) -> Self {
        Self::run(folder, command.arg(folder).arg("--no-open"))
    }

    /// A bench of the studio that starts a browser, which is looked for along this path.
    pub fn opening(folder: &Path, path: &str) -> Self {
        Self::run(folder, Command::new(PROGRAM).arg("bench").arg(folder).arg("--studio").env("PATH", path))
    }

    fn run(folder: &Path, command: &mut Command) -> Self {
        let mut child = command.stdout(Stdio::piped()).stderr(Stdio::null()).spawn().unwrap();
        let mut said = String::new();
        let mut out = BufReader::new(child.stdout.take().unwrap());
        while !said.contains("Ctrl-C") {
            assert!(out.read_line(&mut said).unwrap() > 0, "it stopped after: {said}");
        }
        let at = said.find("http://").unwrap() + "http://".len();
        let host = said[at..].split('/').next().unwrap();
        let address = host.parse().unwrap();
        Self { child, address, said, folder: folder.canonicalize().unwrap(), room: None }
    }

    /// The folder with the patterns.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// What a pattern file holds now.
    pub fn file(&self, name: &str) -> String {
        std::fs::read_to_string(self.folder.join(name)).unwrap()
    }

    /// Ends the server as a loss of power would.
    pub fn kill(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }

    /// An open connection.
    pub fn connect(&self) -> TcpStream {
        connect(self.address)
    }

    /// Sends a head and a body as they are and reads the answer.
    pub fn raw(&self, head: &str, body: &[u8]) -> Answer {
        raw(self.address, head, body)
    }

    /// The token that stands on the terminal.
    pub fn token(&self) -> String {
        let (_, rest) = self.said.split_once("?token=").unwrap();
        rest.chars().take_while(char::is_ascii_hexdigit).collect()
    }

    /// A guest of the studio on a machine of its own, let in by the token. Each address of 127.0.0.0/8
    /// (RFC 1122, section 3.2.1.3) is a machine of its own to the server.
    pub fn guest(&self, number: u8) -> Guest {
        let guest = Guest { host: self.address, from: number, cookie: String::new() };
        let entered = guest.ask("GET", &format!("/?token={}", self.token()), None);
        let cookie = entered.head.split("set-cookie: ").nth(1).and_then(|rest| rest.split(';').next());
        let cookie = cookie.unwrap_or_else(|| panic!("{}", entered.head)).to_owned();
        Guest { cookie, ..guest }
    }

    /// Numbers of the processes that the server started and that still run.
    #[cfg(target_os = "linux")]
    pub fn workers(&self) -> Vec<u32> {
        let tasks = std::fs::read_dir(format!("/proc/{}/task", self.child.id())).unwrap();
        let children = tasks.flatten().filter_map(|task| {
            let children = std::fs::read_to_string(task.path().join("children"));
            children.ok()
        });
        let numbers: Vec<String> = children.collect();
        numbers.join(" ").split_whitespace().map(|number| number.parse().unwrap()).collect()
    }

    /// A request as the page sends it.
    pub fn ask(&self, method: &str, path: &str, body: Option<&Value>) -> Answer {
        self.ask_with(method, path, &[], body)
    }

    /// The same with more headers.
    pub fn ask_with(
        &self,
        method: &str,
        path: &str,
        headers: &[(&str, &str)],
        body: Option<&Value>,
    ) -> Answer {
        ask(self.address, (method, path), headers, body)
    }

    /// A `POST` that has to succeed.
    pub fn post(&self, path: &str, body: &Value) -> Value {
        let answer = self.ask("POST", path, Some(body));
        assert!(answer.status < 300, "{path}: {} {}", answer.status, answer.text());
        answer.json()
    }

    /// A `GET` that has to succeed.
    pub fn get(&self, path: &str) -> Answer {
        let answer = self.ask("GET", path, None);
        assert_eq!(answer.status, 200, "{path}: {}", answer.text());
        answer
    }

    /// Fails unless the server still answers.
    pub fn assert_lives(&self) {
        assert_eq!(self.get("/api/health").json()["version"], env!("CARGO_PKG_VERSION"));
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A guest of the studio.
pub struct Guest {
    host: SocketAddr,
    from: u8,
    /// What its browser sends, once it was let in.
    pub cookie: String,
}

impl Guest {
    /// A request as the page sends it.
    pub fn ask(&self, method: &str, path: &str, body: Option<&Value>) -> Answer {
        read(&mut self.begin(method, path, body))
    }

    /// Sends a request and leaves the answer where it is.
    pub fn begin(&self, method: &str, path: &str, body: Option<&Value>) -> TcpStream {
        let mut stream = self.connect();
        let body = body.map(Value::to_string).unwrap_or_default();
        let head = head(self.host, (method, path), &[("Cookie", &self.cookie)], &body);
        stream.write_all((head + &body).as_bytes()).unwrap();
        stream
    }

    /// An open connection from the guest's machine, with a small buffer: what is not read stays with the
    /// server.
    pub fn connect(&self) -> TcpStream {
        let socket = Socket::new(Domain::IPV4, Type::STREAM, None).unwrap();
        socket.bind(&SocketAddr::from(([127, 0, 0, self.from], 0)).into()).unwrap();
        socket.set_recv_buffer_size(64 * 1024).unwrap();
        socket.connect(&self.host.into()).unwrap();
        socket.set_read_timeout(Some(Duration::from_secs(40))).unwrap();
        socket.into()
    }
}

fn connect(address: SocketAddr) -> TcpStream {
    let stream = TcpStream::connect(address).unwrap();
    stream.set_read_timeout(Some(Duration::from_secs(40))).unwrap();
    stream
}

fn raw(address: SocketAddr, head: &str, body: &[u8]) -> Answer {
    let mut stream = connect(address);
    stream.write_all(head.as_bytes()).unwrap();
    // A server that refuses early may close before all is sent.
    let _ = stream.write_all(body);
    read(&mut stream)
}

fn ask(address: SocketAddr, request: (&str, &str), headers: &[(&str, &str)], body: Option<&Value>) -> Answer {
    let body = body.map(Value::to_string).unwrap_or_default();
    raw(address, &head(address, request, headers, &body), body.as_bytes())
}

fn head(host: SocketAddr, (method, path): (&str, &str), headers: &[(&str, &str)], body: &str) -> String {
    let mut head = format!(
        "{method} {path} HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\nContent-Type: application/json\r\n\
         Content-Length: {}\r\nConnection: close\r\n",
        body.len()
    );
    for (name, value) in headers {
        let _ = write!(head, "{name}: {value}\r\n");
    }
    head + "\r\n"
}

/// Waits until something holds.
pub fn until(what: &str, holds: impl Fn() -> bool) {
    let begun = std::time::Instant::now();
    while !holds() {
        assert!(begun.elapsed() < Duration::from_secs(40), "waited in vain: {what}");
        std::thread::sleep(Duration::from_millis(5));
    }
}

/// Reads an answer to its end, however it is sent.
pub fn read(stream: &mut TcpStream) -> Answer {
    let mut bytes = Vec::new();
    let mut piece = vec![0; 64 * 1024];
    loop {
        match stream.read(&mut piece) {
            Ok(0) => break,
            Ok(length) => bytes.extend_from_slice(&piece[..length]),
            // The rest of a body that was not read resets the connection after the answer.
            Err(error) if error.kind() == std::io::ErrorKind::ConnectionReset => break,
            Err(error) => panic!("{error}: {}", String::from_utf8_lossy(&bytes)),
        }
    }
    let end = bytes.windows(4).position(|four| four == b"\r\n\r\n").map_or(bytes.len(), |end| end + 4);
    let head = String::from_utf8_lossy(&bytes[..end]).to_lowercase();
    let status = head.split(' ').nth(1).and_then(|status| status.parse().ok()).unwrap_or(0);
    let body = bytes[end..].to_vec();
    Answer {
        status,
        body: if head.contains("transfer-encoding: chunked") { unchunked(&body) } else { body },
        head,
    }
}

fn unchunked(mut body: &[u8]) -> Vec<u8> {
    let mut whole = Vec::new();
    while let Some(line) = body.windows(2).position(|two| two == b"\r\n") {
        let length = usize::from_str_radix(std::str::from_utf8(&body[..line]).unwrap(), 16).unwrap();
        whole.extend_from_slice(&body[line + 2..line + 2 + length]);
        body = &body[line + 2 + length + 2..];
        if length == 0 {
            break;
        }
    }
    whole
}

/// The example basket.
pub fn harbour() -> String {
    let patterns = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../patterns");
    std::fs::read_to_string(patterns.join("harbour-bread-basket.toml")).unwrap()
}

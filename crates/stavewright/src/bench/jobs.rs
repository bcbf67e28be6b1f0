//! Packets in the making: a few at a time, kept for a while, and stopped when asked.

use std::collections::BTreeMap;
use std::io::{Cursor, Write};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use axum::http::StatusCode;
use basket::Draft;
use sheets::Options;
use words::Words;
use zip::write::SimpleFileOptions;

use super::api::{Packet, PacketFile, PacketState};
use super::refusal::Refusal;
use super::secret::random_text;

/// Packets that are made at the same time.
const MOST_WORKING: usize = 2;
/// Packets that are kept.
const MOST_KEPT: usize = 8;
/// How long a packet is kept.
const KEPT_FOR: Duration = Duration::from_mins(20);
/// The file that holds all others.
const ALL: &str = "packet.zip";

/// All packets.
#[derive(Default)]
pub(crate) struct Jobs(Mutex<BTreeMap<String, Job>>);

struct Job {
    begun: Instant,
    /// Whether its thread is still at work, be it for nobody.
    at_work: bool,
    packet: Packet,
    files: BTreeMap<String, Arc<Vec<u8>>>,
}

impl Jobs {
    fn all(&self) -> MutexGuard<'_, BTreeMap<String, Job>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Begins a packet; it is made on a thread of its own.
    pub(crate) fn begin(
        self: &Arc<Self>,
        draft: Draft,
        words: Words,
        options: Options,
    ) -> Result<Packet, Refusal> {
        let id = random_text()?;
        let packet = {
            let mut all = self.all();
            make_room(&mut all)?;
            // Each sheet, the data and the whole.
            let total = u32::try_from(sheets::SHEETS.len()).unwrap_or(0) + 2;
            let packet = Packet {
                id: id.clone(),
                state: PacketState::Working,
                now: None,
                done: 0,
                total,
                files: Vec::new(),
                fault: None,
            };
            let job =
                Job { begun: Instant::now(), at_work: true, packet: packet.clone(), files: BTreeMap::new() };
            all.insert(id.clone(), job);
            packet
        };
        let jobs = Arc::clone(self);
        std::thread::spawn(move || {
            let made = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| {
                make(&draft, &words, &options, &mut |step| jobs.tell(&id, step))
            }));
            let made = made.unwrap_or_else(|_| {
                Err("the sheets could not be set; the fault is Stavewright's".to_owned())
            });
            jobs.end(&id, made);
        });
        Ok(packet)
    }

    /// How far a packet is.
    pub(crate) fn ask(&self, id: &str) -> Result<Packet, Refusal> {
        self.all().get(id).map(|job| job.packet.clone()).ok_or_else(unknown)
    }

    /// Stops a packet, or throws a finished one away. What a thread is setting it sets to the end, for
    /// nobody.
    pub(crate) fn stop(&self, id: &str) -> Result<Packet, Refusal> {
        let mut all = self.all();
        let job = all.get_mut(id).ok_or_else(unknown)?;
        job.packet.state = PacketState::Stopped;
        job.packet.now = None;
        job.packet.files.clear();
        job.files.clear();
        Ok(job.packet.clone())
    }

    /// A file of a finished packet.
    pub(crate) fn file(&self, id: &str, name: &str) -> Result<Arc<Vec<u8>>, Refusal> {
        let all = self.all();
        let job = all.get(id).ok_or_else(unknown)?;
        job.files.get(name).cloned().ok_or_else(|| {
            let shown: String = name.chars().take(60).collect();
            Refusal::new(
                StatusCode::NOT_FOUND,
                "there is no such file in the packet",
                shown,
                "GET /api/packets/{id} lists its files when it is done.",
            )
        })
    }

    fn tell(&self, id: &str, step: &str) {
        if let Some(job) = self.all().get_mut(id)
            && job.packet.state == PacketState::Working
        {
            if job.packet.now.is_some() {
                job.packet.done = (job.packet.done + 1).min(job.packet.total - 1);
            }
            job.packet.now = Some(step.to_owned());
        }
    }

    fn end(&self, id: &str, made: Result<Files, String>) {
        let mut all = self.all();
        let Some(job) = all.get_mut(id) else { return };
        job.at_work = false;
        if job.packet.state != PacketState::Working {
            return;
        }
        job.packet.now = None;
        match made {
            Ok(files) => {
                job.packet.state = PacketState::Done;
                job.packet.done = job.packet.total;
                job.packet.files = files.iter().map(|(name, bytes)| listed(name, bytes)).collect();
                job.files = files.into_iter().map(|(name, bytes)| (name, Arc::new(bytes))).collect();
            }
            Err(fault) => {
                job.packet.state = PacketState::Failed;
                job.packet.fault = Some(fault);
            }
        }
    }
}

/// Names and contents, in the order of the packet.
type Files = Vec<(String, Vec<u8>)>;

fn make(
    draft: &Draft,
    words: &Words,
    options: &Options,
    tell: &mut dyn FnMut(&str),
) -> Result<Files, String> {
    let packet = sheets::packet(draft, words, options, tell).map_err(|error| error.to_string())?;
    tell(ALL);
    let mut files: Files = packet.into_iter().map(|file| (file.name.to_owned(), file.bytes)).collect();
    let all = zipped(&files).map_err(|error| error.to_string())?;
    files.push((ALL.to_owned(), all));
    Ok(files)
}

fn zipped(files: &Files) -> zip::result::ZipResult<Vec<u8>> {
    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in files {
        zip.start_file(name.as_str(), SimpleFileOptions::default())?;
        zip.write_all(bytes)?;
    }
    Ok(zip.finish()?.into_inner())
}

fn listed(name: &str, bytes: &[u8]) -> PacketFile {
    PacketFile {
        name: name.to_owned(),
        media: media(name).to_owned(),
        bytes: u32::try_from(bytes.len()).unwrap_or(u32::MAX),
    }
}

/// The media type of a file by its ending.
pub(crate) fn media(name: &str) -> &'static str {
    match name.rsplit_once('.').map_or("", |(_, ending)| ending) {
        "css" => "text/css; charset=utf-8",
        "csv" => "text/csv; charset=utf-8",
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "json" | "map" => "application/json",
        "pdf" => "application/pdf",
        "png" => "image/png",
        "svg" => "image/svg+xml",
        "woff2" => "font/woff2",
        "zip" => "application/zip",
        _ => "application/octet-stream",
    }
}

/// Throws away what is old; refuses when as many as may be are being made.
fn make_room(all: &mut BTreeMap<String, Job>) -> Result<(), Refusal> {
    all.retain(|_, job| job.at_work || job.begun.elapsed() < KEPT_FOR);
    if all.values().filter(|job| job.at_work).count() >= MOST_WORKING {
        return Err(Refusal::new(
            StatusCode::TOO_MANY_REQUESTS,
            "other packets are being made",
            "packets",
            "Wait until one is done, or stop it.",
        ));
    }
    while all.len() >= MOST_KEPT {
        let oldest = all.iter().filter(|(_, job)| !job.at_work).min_by_key(|(_, job)| job.begun);
        let Some(oldest) = oldest.map(|(id, _)| id.clone()) else { break };
        all.remove(&oldest);
    }
    Ok(())
}

fn unknown() -> Refusal {
    Refusal::new(
        StatusCode::NOT_FOUND,
        "there is no such packet",
        "packets",
        "It may have been thrown away, for the server keeps the last few; have it made again.",
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn job(state: PacketState, at_work: bool) -> Job {
        let packet =
            Packet { id: String::new(), state, now: None, done: 0, total: 6, files: Vec::new(), fault: None };
        Job { begun: Instant::now(), at_work, packet, files: BTreeMap::new() }
    }

    fn all(jobs: Vec<Job>) -> BTreeMap<String, Job> {
        (0..).map(|number: u32| number.to_string()).zip(jobs).collect()
    }

    #[test]
    fn stopped_packets_count_until_their_threads_have_ended() {
        let stopped = || job(PacketState::Stopped, true);
        let refused = make_room(&mut all(vec![stopped(), stopped()]));
        assert_eq!(refused.unwrap_err().status(), StatusCode::TOO_MANY_REQUESTS);
        assert!(make_room(&mut all(vec![stopped(), job(PacketState::Stopped, false)])).is_ok());
    }

    #[test]
    fn the_oldest_packets_make_room_but_none_at_work() {
        let mut jobs: Vec<Job> = (0..MOST_KEPT).map(|_| job(PacketState::Done, false)).collect();
        jobs[0].at_work = true;
        let mut all = all(jobs);
        assert!(make_room(&mut all).is_ok());
        assert_eq!(all.len(), MOST_KEPT - 1);
        assert!(all.contains_key("0") && !all.contains_key("1"));
    }
}

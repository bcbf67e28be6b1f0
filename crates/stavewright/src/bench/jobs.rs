//! Packets in the making: a share for each guest, kept for a while, and stopped when asked.

use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use axum::http::StatusCode;
use basket::message::Message;
use bytes::Bytes;
use serde::Deserialize;
use tokio::sync::Notify;
use tokio::task::AbortHandle;
use words::Language;

use super::answer::Answer;
use super::api::{Fault, Packet, PacketFile, PacketState};
use super::gate::Gate;
use super::guest::Guest;
use super::refusal::Refusal;
use super::secret::random_text;
use super::workers::{Order, Task, Word, Workers};

/// Packets that are made at the same time.
const MOST_WORKING: usize = 2;
/// Packets that one guest may have in the making: one at work, one that waits.
const MOST_OF_ONE: usize = 2;
/// Packets that are kept.
const MOST_KEPT: usize = 8;
/// How long a packet is kept.
const KEPT_FOR: Duration = Duration::from_mins(20);
/// No packet takes longer.
const LONGEST: Duration = Duration::from_mins(5);

/// All packets.
pub(crate) struct Jobs {
    workers: Arc<Workers>,
    turns: Gate,
    all: Mutex<BTreeMap<String, Job>>,
}

struct Job {
    guest: IpAddr,
    begun: Instant,
    packet: Packet,
    files: BTreeMap<String, Bytes>,
    /// Ends its making at once.
    stop: Option<AbortHandle>,
    /// Tells a search to answer with the best it has.
    enough: Arc<Notify>,
}

impl Job {
    fn new(guest: IpAddr, packet: Packet, enough: &Arc<Notify>) -> Self {
        let (begun, enough) = (Instant::now(), Arc::clone(enough));
        Self { guest, begun, packet, files: BTreeMap::new(), stop: None, enough }
    }

    fn works(&self) -> bool {
        self.packet.state == PacketState::Working
    }
}

impl Jobs {
    /// No packets yet.
    pub(crate) fn new(workers: Arc<Workers>) -> Self {
        Self { workers, turns: Gate::new(MOST_WORKING, 1), all: Mutex::default() }
    }

    fn all(&self) -> MutexGuard<'_, BTreeMap<String, Job>> {
        self.all.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Begins a packet.
    pub(crate) fn begin(
        self: &Arc<Self>,
        Guest(guest): Guest,
        order: Order,
        request: Vec<u8>,
    ) -> Result<Packet, Refusal> {
        let id = random_text()?;
        let packet = Packet {
            id: id.clone(),
            state: PacketState::Working,
            now: None,
            done: 0,
            total: steps(order.task),
            files: Vec::new(),
            fault: None,
        };
        let enough = Arc::new(Notify::new());
        {
            let mut all = self.all();
            make_room(&mut all, guest)?;
            all.insert(id.clone(), Job::new(guest, packet.clone(), &enough));
        }
        let (jobs, own) = (Arc::clone(self), id.clone());
        let reader = serde_json::from_slice::<Reader>(&request).ok();
        let language = reader.and_then(|reader| Language::of(&reader.language?)).unwrap_or_default();
        let making = tokio::spawn(async move {
            let made = jobs.make((&own, guest), order, &request, &enough).await;
            jobs.end(&own, made.map_err(|refusal| refusal.told(language)));
        });
        if let Some(job) = self.all().get_mut(&id) {
            job.stop = Some(making.abort_handle());
        }
        Ok(packet)
    }

    async fn make(
        &self,
        (id, guest): (&str, IpAddr),
        order: Order,
        request: &[u8],
        enough: &Notify,
    ) -> Result<Answer, Refusal> {
        let _turn = self.turns.turn(guest).await?;
        let mut hear = |word, body: Vec<u8>| match word {
            Word::Step(step) => self.tell(id, &step),
            Word::File(name) => self.put(id, name, body.into()),
            Word::Answer { .. } => {}
        };
        let making = self.workers.run(order, request, (&mut hear, enough));
        tokio::time::timeout(LONGEST, making).await.unwrap_or_else(|_| {
            Err(Refusal::said(
                StatusCode::UNPROCESSABLE_ENTITY,
                Message::new("refused-packet-too-long"),
                "the pattern",
            ))
        })
    }

    /// How far a packet is.
    pub(crate) fn ask(&self, id: &str) -> Result<Packet, Refusal> {
        self.all().get(id).map(|job| job.packet.clone()).ok_or_else(unknown)
    }

    /// Has a search answer with the best it has so far.
    pub(crate) fn enough(&self, id: &str) -> Result<Packet, Refusal> {
        let all = self.all();
        let job = all.get(id).ok_or_else(unknown)?;
        job.enough.notify_one();
        Ok(job.packet.clone())
    }

    /// Stops a packet at once, or throws a finished one away.
    pub(crate) fn stop(&self, id: &str) -> Result<Packet, Refusal> {
        let mut all = self.all();
        let job = all.get_mut(id).ok_or_else(unknown)?;
        if let Some(stop) = job.stop.take() {
            stop.abort();
        }
        job.packet.state = PacketState::Stopped;
        job.packet.now = None;
        job.packet.files.clear();
        job.files.clear();
        Ok(job.packet.clone())
    }

    /// A file of a finished packet.
    pub(crate) fn file(&self, id: &str, name: &str) -> Result<Bytes, Refusal> {
        let all = self.all();
        let job = all.get(id).filter(|job| !job.works()).ok_or_else(unknown)?;
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
        if let Some(job) = self.all().get_mut(id).filter(|job| job.works()) {
            if job.packet.now.is_some() {
                job.packet.done = (job.packet.done + 1).min(job.packet.total - 1);
            }
            job.packet.now = Some(step.to_owned());
        }
    }

    fn put(&self, id: &str, name: String, bytes: Bytes) {
        if let Some(job) = self.all().get_mut(id).filter(|job| job.works()) {
            job.packet.files.push(listed(&name, &bytes));
            job.files.insert(name, bytes);
        }
    }

    fn end(&self, id: &str, made: Result<Answer, Refusal>) {
        let mut all = self.all();
        let Some(job) = all.get_mut(id).filter(|job| job.works()) else { return };
        job.packet.now = None;
        let fault = match made {
            Ok(answer) if answer.status.is_success() => None,
            Ok(answer) => Some(
                serde_json::from_slice::<Fault>(&answer.body)
                    .map_or_else(|error| error.to_string(), |fault| whole(&fault)),
            ),
            Err(refusal) => Some(whole(refusal.fault())),
        };
        if fault.is_none() {
            job.packet.state = PacketState::Done;
            job.packet.done = job.packet.total;
        } else {
            job.packet.state = PacketState::Failed;
            job.packet.files.clear();
            job.files.clear();
        }
        job.packet.fault = fault;
    }
}

/// Whom a request for a packet names.
#[derive(Deserialize)]
struct Reader {
    language: Option<String>,
}

/// What is wrong, and how to mend it.
fn whole(fault: &Fault) -> String {
    format!("{} {}", fault.what, fault.how_to_mend).trim_end().to_owned()
}

/// How many steps a work has: of a packet each sheet, the data and the whole; of a search nobody knows.
fn steps(task: Task) -> u32 {
    if task == Task::Packet { u32::try_from(sheets::SHEETS.len()).unwrap_or(0) + 2 } else { 100 }
}

fn listed(name: &str, bytes: &Bytes) -> PacketFile {
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
        "ics" => "text/calendar; charset=utf-8",
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

/// Throws away what is old; refuses a guest that has as many in the making as it may.
fn make_room(all: &mut BTreeMap<String, Job>, guest: IpAddr) -> Result<(), Refusal> {
    all.retain(|_, job| job.works() || job.begun.elapsed() < KEPT_FOR);
    if all.values().filter(|job| job.works() && job.guest == guest).count() >= MOST_OF_ONE {
        return Err(Refusal::said(StatusCode::TOO_MANY_REQUESTS, Message::new("refused-packets"), "packets"));
    }
    while all.len() >= MOST_KEPT {
        let Some(id) = first_to_go(all) else { break };
        all.remove(&id);
    }
    Ok(())
}

/// The oldest packet of the guest who has most of them.
fn first_to_go(all: &BTreeMap<String, Job>) -> Option<String> {
    let resting = || all.iter().filter(|(_, job)| !job.works());
    let of = |guest| resting().filter(|(_, job)| job.guest == guest).count();
    let (_, most) = resting().max_by_key(|(_, job)| of(job.guest))?;
    let theirs = resting().filter(|(_, job)| job.guest == most.guest);
    theirs.min_by_key(|(_, job)| job.begun).map(|(id, _)| id.clone())
}

fn unknown() -> Refusal {
    Refusal::said(StatusCode::NOT_FOUND, Message::new("refused-no-packet"), "packets")
}

#[cfg(test)]
mod tests {
    use std::net::Ipv4Addr;

    use super::*;

    fn guest(number: u8) -> IpAddr {
        Ipv4Addr::new(10, 0, 0, number).into()
    }

    fn job(guest: IpAddr, state: PacketState) -> Job {
        let packet =
            Packet { id: String::new(), state, now: None, done: 0, total: 6, files: Vec::new(), fault: None };
        Job::new(guest, packet, &Arc::default())
    }

    fn all(jobs: Vec<Job>) -> BTreeMap<String, Job> {
        (0..).map(|number: u32| number.to_string()).zip(jobs).collect()
    }

    #[test]
    fn one_guests_packets_leave_room_for_another_guests() {
        let mut all = all(vec![job(guest(1), PacketState::Working), job(guest(1), PacketState::Working)]);
        let refused = make_room(&mut all, guest(1)).unwrap_err();
        assert_eq!(refused.status(), StatusCode::TOO_MANY_REQUESTS);
        assert!(make_room(&mut all, guest(2)).is_ok());
        for job in all.values_mut() {
            job.packet.state = PacketState::Stopped;
        }
        assert!(make_room(&mut all, guest(1)).is_ok());
    }

    #[test]
    fn whoever_keeps_most_packets_loses_the_oldest_but_none_at_work() {
        let mut jobs: Vec<Job> = (1..MOST_KEPT).map(|_| job(guest(1), PacketState::Done)).collect();
        jobs.insert(0, job(guest(2), PacketState::Done));
        jobs[1].packet.state = PacketState::Working;
        let mut all = all(jobs);
        assert!(make_room(&mut all, guest(2)).is_ok());
        assert_eq!(all.len(), MOST_KEPT - 1);
        assert!(all.contains_key("0") && all.contains_key("1") && !all.contains_key("2"));
    }
}

//! Places for connections: when all are taken, whoever has most of them makes room.

use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use tokio::sync::oneshot;

use super::patient::Heard;

/// Connections that are served at a time. Systems allow a program 1024 open files or more.
const MOST: usize = 256;

/// All places.
#[derive(Default)]
pub(crate) struct Places(Mutex<Taken>);

#[derive(Default)]
struct Taken {
    next: u64,
    each: BTreeMap<u64, Connection>,
}

struct Connection {
    guest: IpAddr,
    heard: Arc<Heard>,
    /// Dropped to have the connection closed.
    _stay: oneshot::Sender<()>,
}

/// The place of one connection; it is free again when it is dropped.
pub(crate) struct Place {
    places: Arc<Places>,
    number: u64,
    /// When something last came through it.
    pub(crate) heard: Arc<Heard>,
    /// Settles when the connection has to make room.
    pub(crate) leave: oneshot::Receiver<()>,
}

impl Places {
    fn taken(&self) -> MutexGuard<'_, Taken> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Takes a place. Where all are taken, the guest with the most connections loses the one through which
    /// nothing came for the longest time.
    pub(crate) fn take(self: &Arc<Self>, guest: IpAddr) -> Place {
        let (stay, leave) = oneshot::channel();
        let heard = Arc::new(Heard::now());
        let mut taken = self.taken();
        if taken.each.len() >= MOST
            && let Some(quietest) = taken.quietest()
        {
            taken.each.remove(&quietest);
        }
        let number = taken.next;
        taken.next += 1;
        taken.each.insert(number, Connection { guest, heard: Arc::clone(&heard), _stay: stay });
        Place { places: Arc::clone(self), number, heard, leave }
    }
}

impl Taken {
    fn quietest(&self) -> Option<u64> {
        let mut counts: BTreeMap<IpAddr, usize> = BTreeMap::new();
        for connection in self.each.values() {
            *counts.entry(connection.guest).or_default() += 1;
        }
        let (crowd, _) = counts.into_iter().max_by_key(|(_, count)| *count)?;
        let theirs = self.each.iter().filter(|(_, connection)| connection.guest == crowd);
        theirs.max_by_key(|(_, connection)| connection.heard.silence()).map(|(number, _)| *number)
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        self.places.taken().each.remove(&self.number);
    }
}

#[cfg(test)]
mod tests {
    use std::net::Ipv4Addr;

    use super::*;

    fn guest(number: u8) -> IpAddr {
        Ipv4Addr::new(10, 0, 0, number).into()
    }

    #[test]
    fn the_largest_crowd_makes_room() {
        let places = Arc::new(Places::default());
        let mut few: Vec<Place> = (0..20).map(|_| places.take(guest(1))).collect();
        let mut crowd: Vec<Place> = (20..MOST).map(|_| places.take(guest(2))).collect();
        let _new = places.take(guest(3));
        let closed = |places: &mut Vec<Place>| {
            let closed =
                |place: &mut Place| place.leave.try_recv() == Err(oneshot::error::TryRecvError::Closed);
            places.iter_mut().map(closed).collect::<Vec<bool>>()
        };
        assert!(!closed(&mut few).contains(&true));
        assert_eq!(closed(&mut crowd).iter().filter(|closed| **closed).count(), 1);
        drop((few, crowd));
        assert_eq!(places.taken().each.len(), 1);
    }
}

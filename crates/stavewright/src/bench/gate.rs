//! Turns for work: never too much at a time, and a share of it for each guest.

use std::collections::{BTreeMap, VecDeque};
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use tokio::sync::oneshot;

use super::refusal::Refusal;

/// Requests of one guest that may wait for a turn: many times what a page asks at once.
const MOST_WAITING: usize = 128;

/// More processors are not used at a time: each piece of work may take a gigabyte of memory.
const MOST_PROCESSORS: usize = 8;

/// A queue that goes round the guests, so that whoever asks little is not kept by whoever asks much.
pub(crate) struct Gate(Arc<Queue>);

impl Gate {
    /// So many turns for all together, and at most `share` of them for one guest.
    pub(crate) fn new(turns: usize, share: usize) -> Self {
        Self(Arc::new(Queue { turns, share, state: Mutex::default() }))
    }

    /// As many turns as there are processors, and one that no guest alone can take from the others.
    pub(crate) fn of_processors() -> Self {
        let processors = std::thread::available_parallelism().map_or(2, std::num::NonZero::get);
        let processors = processors.clamp(2, MOST_PROCESSORS);
        Self::new(processors + 1, processors)
    }

    /// Waits for a turn. Whoever stops waiting leaves the queue.
    pub(crate) async fn turn(&self, guest: IpAddr) -> Result<Turn, Refusal> {
        let (sender, receiver) = oneshot::channel();
        self.0.state().join(guest, sender)?;
        Queue::hand_out(&self.0);
        receiver.await.map_err(|_| Refusal::busy())
    }

    /// Does a piece of work with the files of the folder on a thread of its own.
    pub(crate) async fn run<T: Send + 'static>(
        &self,
        guest: IpAddr,
        work: impl FnOnce() -> Result<T, Refusal> + Send + 'static,
    ) -> Result<T, Refusal> {
        let turn = self.turn(guest).await?;
        // A thread cannot be stopped: its turn is given back when the work is done.
        let work = tokio::task::spawn_blocking(move || {
            let _turn = turn;
            work()
        });
        work.await.unwrap_or_else(|_| Err(Refusal::broken()))
    }
}

/// Leave to work. It ends when it is dropped.
pub(crate) struct Turn {
    queue: Arc<Queue>,
    guest: IpAddr,
    at_work: bool,
}

impl Turn {
    /// The work is done and another may begin. As long as the turn is kept, with an answer that its guest
    /// has not taken yet, it counts toward the guest's share: whoever does not read gets no more.
    pub(crate) fn done(mut self) -> Self {
        self.queue.state().taken -= 1;
        self.at_work = false;
        Queue::hand_out(&self.queue);
        self
    }
}

impl Drop for Turn {
    fn drop(&mut self) {
        let mut state = self.queue.state();
        state.taken -= usize::from(self.at_work);
        state.leave(self.guest);
        drop(state);
        Queue::hand_out(&self.queue);
    }
}

struct Queue {
    turns: usize,
    share: usize,
    state: Mutex<State>,
}

#[derive(Default)]
struct State {
    /// Turns that are at work.
    taken: usize,
    guests: BTreeMap<IpAddr, Guest>,
    /// Guests of whom requests wait, the next one first.
    circle: VecDeque<IpAddr>,
}

#[derive(Default)]
struct Guest {
    /// Turns that it has, at work or with an answer that it has not taken.
    held: usize,
    waiting: VecDeque<oneshot::Sender<Turn>>,
}

impl Queue {
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn hand_out(queue: &Arc<Self>) {
        loop {
            let next = queue.state().next(queue.turns, queue.share);
            let Some((guest, sender)) = next else { return };
            // Whoever left at this moment gives the turn back by dropping it.
            let _ = sender.send(Turn { queue: Arc::clone(queue), guest, at_work: true });
        }
    }
}

impl State {
    fn join(&mut self, address: IpAddr, sender: oneshot::Sender<Turn>) -> Result<(), Refusal> {
        let guest = self.guests.entry(address).or_default();
        guest.waiting.retain(|waiting| !waiting.is_closed());
        if guest.waiting.len() >= MOST_WAITING {
            return Err(Refusal::busy());
        }
        guest.waiting.push_back(sender);
        if !self.circle.contains(&address) {
            self.circle.push_back(address);
        }
        Ok(())
    }

    /// The guest whose turn it is, and where it waits.
    fn next(&mut self, turns: usize, share: usize) -> Option<(IpAddr, oneshot::Sender<Turn>)> {
        if self.taken >= turns {
            return None;
        }
        for _ in 0..self.circle.len() {
            let address = self.circle.pop_front()?;
            let guest = self.guests.entry(address).or_default();
            guest.waiting.retain(|waiting| !waiting.is_closed());
            if guest.waiting.is_empty() {
                self.forget(address);
                continue;
            }
            self.circle.push_back(address);
            if guest.held < share
                && let Some(sender) = guest.waiting.pop_front()
            {
                guest.held += 1;
                self.taken += 1;
                return Some((address, sender));
            }
        }
        None
    }

    fn leave(&mut self, address: IpAddr) {
        if let Some(guest) = self.guests.get_mut(&address) {
            guest.held = guest.held.saturating_sub(1);
        }
        self.forget(address);
    }

    fn forget(&mut self, address: IpAddr) {
        if self.guests.get(&address).is_some_and(|guest| guest.held == 0 && guest.waiting.is_empty()) {
            self.guests.remove(&address);
        }
    }
}

#[cfg(test)]
mod tests {
    use std::net::Ipv4Addr;

    use super::*;

    const ONE: IpAddr = IpAddr::V4(Ipv4Addr::new(10, 0, 0, 1));
    const OTHER: IpAddr = IpAddr::V4(Ipv4Addr::new(10, 0, 0, 2));

    /// A turn, if it is to be had at once.
    async fn now(gate: &Gate, guest: IpAddr) -> Option<Turn> {
        tokio::select! {
            biased;
            turn = gate.turn(guest) => turn.ok(),
            () = tokio::task::yield_now() => None,
        }
    }

    #[tokio::test]
    async fn a_panic_is_an_answer_and_the_gate_goes_on() {
        let gate = Gate::of_processors();
        for _ in 0..10 {
            let fell: Result<(), Refusal> = gate.run(ONE, || panic!("on purpose")).await;
            assert_eq!(fell.unwrap_err().status(), 500);
        }
        assert_eq!(gate.run(ONE, || Ok(7)).await.unwrap(), 7);
    }

    #[tokio::test]
    async fn one_guest_never_has_all_turns() {
        let gate = Gate::new(3, 2);
        let held = [now(&gate, ONE).await, now(&gate, ONE).await];
        assert!(held.iter().all(Option::is_some));
        assert!(now(&gate, ONE).await.is_none());
        assert!(now(&gate, OTHER).await.is_some());
        drop(held);
        assert!(now(&gate, ONE).await.is_some());
    }

    #[tokio::test]
    async fn an_answer_that_is_not_taken_costs_its_guest_and_nobody_else() {
        let gate = Gate::new(1, 1);
        let unread = now(&gate, ONE).await.unwrap().done();
        assert!(now(&gate, ONE).await.is_none());
        assert!(now(&gate, OTHER).await.is_some());
        drop(unread);
        assert!(now(&gate, ONE).await.is_some());
    }

    #[tokio::test]
    async fn turns_go_round_the_guests() {
        let gate = Arc::new(Gate::new(1, 1));
        let first = now(&gate, ONE).await.unwrap();
        let (told, mut heard) = tokio::sync::mpsc::unbounded_channel();
        for guest in [ONE, ONE, ONE, OTHER] {
            let (own, told) = (Arc::clone(&gate), told.clone());
            tokio::spawn(async move {
                let turn = own.turn(guest).await.unwrap();
                told.send(guest).unwrap();
                drop(turn);
            });
            // Each stands in the queue before the next one comes.
            tokio::task::yield_now().await;
        }
        drop((first, told));
        let mut order = Vec::new();
        while let Some(guest) = heard.recv().await {
            order.push(guest);
        }
        assert_eq!(order, [ONE, OTHER, ONE, ONE]);
    }

    #[tokio::test]
    async fn whoever_leaves_keeps_no_place() {
        let gate = Gate::new(1, 1);
        let turn = now(&gate, ONE).await.unwrap();
        for _ in 0..2 * MOST_WAITING {
            assert!(now(&gate, OTHER).await.is_none());
        }
        drop(turn);
        assert!(now(&gate, ONE).await.is_some());
        assert!(gate.0.state().guests.is_empty());
    }

    #[tokio::test]
    async fn one_guests_queue_is_short() {
        let gate = Arc::new(Gate::new(1, 1));
        let _turn = now(&gate, ONE).await.unwrap();
        let waiting: Vec<_> = (0..MOST_WAITING)
            .map(|_| {
                let (sender, receiver) = oneshot::channel();
                gate.0.state().join(ONE, sender).unwrap();
                receiver
            })
            .collect();
        assert_eq!(gate.turn(ONE).await.err().unwrap().status(), 503);
        drop(waiting);
    }
}

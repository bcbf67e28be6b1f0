//! The studio's door: its token lets a browser in for a while, wrong tokens make the door slow.

use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use super::refusal::Refusal;
use super::secret::{is_same, random_text};

/// How long a browser is let in: a day in the studio.
pub(crate) const STAY: Duration = Duration::from_hours(12);
/// Browsers that are let in at a time; the one that came first goes first.
const MOST_STAYING: usize = 500;
/// How long the link for this machine's own browser holds.
const LINK: Duration = Duration::from_mins(1);
/// So many wrong tokens are taken for slips of the hand.
const FREE_TRIES: u32 = 5;
/// The longest time for which a machine has to wait after wrong tokens; then they are forgotten.
const LONGEST_WAIT: Duration = Duration::from_mins(1);
/// Machines whose wrong tokens are remembered.
const MOST_REMEMBERED: usize = 1000;

/// The door of a bench that is open to the local network.
pub(crate) struct Door {
    /// Whoever knows it gets in.
    pub(crate) token: String,
    inside: Mutex<Inside>,
}

struct Inside {
    /// Lets the browser of this machine in, once.
    link: Option<(String, Instant)>,
    /// What browsers that were let in hold, and when they came.
    stays: BTreeMap<String, Instant>,
    wrong: BTreeMap<IpAddr, Wrong>,
}

#[derive(Clone, Copy)]
struct Wrong {
    tries: u32,
    last: Instant,
}

/// What a token leads to.
pub(crate) enum Knocked {
    /// In; the browser holds this from now on.
    In(String),
    /// The token is wrong.
    Wrong,
    /// The machine has to wait so long before it tries again.
    Wait(Duration),
}

impl Door {
    /// A door with new secrets.
    pub(crate) fn new() -> Result<Self, Refusal> {
        let inside = Inside { link: None, stays: BTreeMap::new(), wrong: BTreeMap::new() };
        Ok(Self { token: random_text()?, inside: Mutex::new(inside) })
    }

    fn inside(&self) -> MutexGuard<'_, Inside> {
        self.inside.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// A token that lets one browser of this machine in, within a minute: others on the machine can read
    /// what a browser is started with.
    pub(crate) fn link(&self) -> Result<String, Refusal> {
        let link = random_text()?;
        self.inside().link = Some((link.clone(), Instant::now()));
        Ok(link)
    }

    /// Whether a browser was let in and may still stay.
    pub(crate) fn knows(&self, stay: &str) -> bool {
        let mut inside = self.inside();
        inside.stays.retain(|_, came| came.elapsed() < STAY);
        inside.stays.keys().any(|known| is_same(known, stay))
    }

    /// Tries a token.
    pub(crate) fn knock(&self, guest: IpAddr, token: &str) -> Result<Knocked, Refusal> {
        let mut inside = self.inside();
        if let Some(wait) = inside.wait(guest) {
            return Ok(Knocked::Wait(wait));
        }
        if !is_same(token, &self.token) && !inside.is_link(guest, token) {
            inside.note(guest);
            return Ok(Knocked::Wrong);
        }
        inside.wrong.remove(&guest);
        let stay = random_text()?;
        if inside.stays.len() >= MOST_STAYING
            && let Some(first) =
                inside.stays.iter().min_by_key(|(_, came)| **came).map(|(stay, _)| stay.clone())
        {
            inside.stays.remove(&first);
        }
        inside.stays.insert(stay.clone(), Instant::now());
        Ok(Knocked::In(stay))
    }
}

impl Inside {
    /// Uses the link up if this is it.
    fn is_link(&mut self, guest: IpAddr, token: &str) -> bool {
        let holds = |(link, made): &(String, Instant)| is_same(link, token) && made.elapsed() < LINK;
        guest.is_loopback() && self.link.take_if(|link| holds(link)).is_some()
    }

    /// Each wrong token beyond the free ones doubles the wait.
    fn wait(&self, guest: IpAddr) -> Option<Duration> {
        let wrong = self.wrong.get(&guest)?;
        let doubled = wrong.tries.checked_sub(FREE_TRIES)?.min(10);
        let wait = Duration::from_secs(1 << doubled).min(LONGEST_WAIT);
        wait.checked_sub(wrong.last.elapsed()).filter(|wait| !wait.is_zero())
    }

    fn note(&mut self, guest: IpAddr) {
        self.wrong.retain(|_, wrong| wrong.last.elapsed() < 2 * LONGEST_WAIT);
        if self.wrong.len() >= MOST_REMEMBERED
            && let Some(first) =
                self.wrong.iter().min_by_key(|(_, wrong)| wrong.last).map(|(guest, _)| *guest)
        {
            self.wrong.remove(&first);
        }
        let now = Instant::now();
        let wrong = self.wrong.entry(guest).or_insert(Wrong { tries: 0, last: now });
        *wrong = Wrong { tries: wrong.tries.saturating_add(1), last: now };
    }
}

#[cfg(test)]
mod tests {
    use std::net::Ipv4Addr;

    use super::*;

    const HERE: IpAddr = IpAddr::V4(Ipv4Addr::LOCALHOST);
    const THERE: IpAddr = IpAddr::V4(Ipv4Addr::new(192, 168, 0, 7));

    #[test]
    fn the_token_lets_in_and_the_stay_ends() {
        let door = Door::new().unwrap();
        let Knocked::In(stay) = door.knock(THERE, &door.token).unwrap() else { panic!("it is the token") };
        assert!(door.knows(&stay) && !door.knows(&door.token));
        let long_ago = Instant::now().checked_sub(STAY).unwrap();
        door.inside().stays.insert(stay.clone(), long_ago);
        assert!(!door.knows(&stay));
    }

    #[test]
    fn the_link_holds_once_and_here_alone() {
        let door = Door::new().unwrap();
        let link = door.link().unwrap();
        assert!(matches!(door.knock(THERE, &link).unwrap(), Knocked::Wrong));
        assert!(matches!(door.knock(HERE, &link).unwrap(), Knocked::In(_)));
        assert!(matches!(door.knock(HERE, &link).unwrap(), Knocked::Wrong));
    }

    #[test]
    fn wrong_tokens_slow_the_door_for_their_machine_alone() {
        let door = Door::new().unwrap();
        for _ in 0..FREE_TRIES {
            assert!(matches!(door.knock(THERE, "guessed").unwrap(), Knocked::Wrong));
        }
        assert!(matches!(door.knock(THERE, &door.token).unwrap(), Knocked::Wait(_)));
        assert!(matches!(door.knock(HERE, &door.token).unwrap(), Knocked::In(_)));
        let before = Instant::now().checked_sub(LONGEST_WAIT).unwrap();
        door.inside().wrong.insert(THERE, Wrong { tries: 90, last: before });
        assert!(matches!(door.knock(THERE, &door.token).unwrap(), Knocked::In(_)));
    }
}

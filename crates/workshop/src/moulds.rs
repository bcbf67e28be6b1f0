//! Moulds: where each is, which patterns fit it, and who has it.

use basket::message::Message;
use rusqlite::OptionalExtension;
use serde::{Deserialize, Serialize};

use crate::fault::Fault;
use crate::store::Store;

/// A mould.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Mould {
    /// What it is called, such as `A`.
    pub name: String,
    /// Where it is kept.
    #[serde(default)]
    pub place: String,
    /// Pattern files that fit it, separated by commas.
    #[serde(default)]
    pub patterns: String,
    /// Anything else.
    #[serde(default)]
    pub note: String,
    /// Its girths as taped, from its foot upward.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub profile: Vec<Girth>,
    /// Who has it now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loan: Option<Loan>,
    /// Whether it was taken off the shelf.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub gone: bool,
}

/// A girth of a mould, as it was taped.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Girth {
    /// How high above the mould's foot, in millimetres.
    pub height_mm: f64,
    /// The girth there, in millimetres.
    pub girth_mm: f64,
}

/// A mould that is out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Loan {
    /// Who has it, such as `student 4`.
    pub to: String,
    /// The day on which it is due back, as `2026-10-18`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due: Option<String>,
}

impl Store {
    /// All moulds, by name.
    ///
    /// # Errors
    /// What the database says.
    pub fn moulds(&self) -> Result<Vec<Mould>, Fault> {
        self.moulds_where("gone = 0")
    }

    pub(crate) fn moulds_where(&self, which: &str) -> Result<Vec<Mould>, Fault> {
        let mut query = self.connection.prepare_cached(&format!(
            "SELECT name, place, patterns, note, to_whom, due, gone FROM moulds \
             LEFT JOIN loans ON loans.mould = moulds.name AND back = 0 WHERE {which} ORDER BY name",
        ))?;
        let read = |row: &rusqlite::Row| {
            let to: Option<String> = row.get(4)?;
            let due = row.get(5)?;
            Ok(Mould {
                name: row.get(0)?,
                place: row.get(1)?,
                patterns: row.get(2)?,
                note: row.get(3)?,
                profile: Vec::new(),
                loan: to.map(|to| Loan { to, due }),
                gone: row.get(6)?,
            })
        };
        let mut moulds: Vec<Mould> = query.query_map([], read)?.collect::<Result<_, _>>()?;
        let mut girths = self.connection.prepare_cached(
            "SELECT height_mm, girth_mm FROM mould_girths WHERE mould = ?1 ORDER BY height_mm",
        )?;
        for mould in &mut moulds {
            let read = |row: &rusqlite::Row| Ok(Girth { height_mm: row.get(0)?, girth_mm: row.get(1)? });
            mould.profile = girths.query_map([&mould.name], read)?.collect::<Result<_, _>>()?;
        }
        Ok(moulds)
    }

    /// Writes a mould down, or changes what is said of the one of this name. Its loan is left as it is, and its
    /// profile where none is given.
    ///
    /// # Errors
    /// [`Fault::Refused`] for an empty name, or a profile that cannot be.
    pub fn put_mould(&mut self, mould: &Mould) -> Result<(), Fault> {
        if mould.name.trim().is_empty() {
            return Err(Fault::cannot("workshop-cannot-unnamed-mould"));
        }
        let is_measure = |girth: &Girth| {
            girth.height_mm.is_finite() && girth.height_mm >= 0.0 && girth.girth_mm.is_finite()
        };
        if !mould.profile.iter().all(|girth| is_measure(girth) && girth.girth_mm > 0.0) {
            return Err(Fault::cannot("workshop-cannot-girth"));
        }
        let work = self.work()?;
        work.execute(
            "INSERT INTO moulds VALUES (?1, ?2, ?3, ?4, ?5) \
             ON CONFLICT (name) DO UPDATE SET place = ?2, patterns = ?3, note = ?4, gone = ?5",
            (&mould.name, &mould.place, &mould.patterns, &mould.note, mould.gone),
        )?;
        if !mould.profile.is_empty() {
            work.execute("DELETE FROM mould_girths WHERE mould = ?1", [&mould.name])?;
        }
        for girth in &mould.profile {
            let put = "INSERT OR REPLACE INTO mould_girths VALUES (?1, ?2, ?3)";
            work.execute(put, (&mould.name, girth.height_mm, girth.girth_mm))?;
        }
        work.commit()?;
        Ok(())
    }

    /// Lends a mould.
    ///
    /// # Errors
    /// [`Fault::Unknown`] for a mould that is not there, [`Fault::Refused`] where somebody has it, the day is
    /// none, or nobody is named.
    pub fn lend(&mut self, mould: &str, loan: &Loan) -> Result<(), Fault> {
        if loan.to.trim().is_empty() {
            return Err(Fault::cannot("workshop-cannot-lend-to-nobody"));
        }
        if loan.due.as_ref().is_some_and(|due| due.parse::<jiff::civil::Date>().is_err()) {
            return Err(Fault::cannot("workshop-cannot-due"));
        }
        let work = self.work()?;
        let known: Option<i64> = work
            .query_row("SELECT 1 FROM moulds WHERE name = ?1 AND gone = 0", [mould], |row| row.get(0))
            .optional()?;
        known.ok_or_else(|| Fault::Unknown { what: "mould", name: mould.to_owned() })?;
        let out = "SELECT to_whom FROM loans WHERE mould = ?1 AND back = 0";
        let out: Option<String> = work.query_row(out, [mould], |row| row.get(0)).optional()?;
        if let Some(to) = out {
            return Err(is_out(mould, &to));
        }
        work.execute(
            "INSERT INTO loans (mould, to_whom, due) VALUES (?1, ?2, ?3)",
            (mould, &loan.to, &loan.due),
        )?;
        work.commit()?;
        Ok(())
    }

    /// Takes a mould back.
    ///
    /// # Errors
    /// [`Fault::Refused`] where it is not out.
    pub fn bring_back(&mut self, mould: &str) -> Result<(), Fault> {
        let changed =
            self.connection.execute("UPDATE loans SET back = 1 WHERE mould = ?1 AND back = 0", [mould])?;
        if changed == 0 { Err(Fault::cannot_of("workshop-cannot-bring-back", mould)) } else { Ok(()) }
    }
}

/// Somebody has the mould.
pub(crate) fn is_out(mould: &str, to: &str) -> Fault {
    Fault::Refused(Message::new("workshop-cannot-mould-out").with("name", mould).with("to", to))
}

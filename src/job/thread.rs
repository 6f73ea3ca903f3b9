//! External ISO metric threads.

use crate::diag::Diag;

/// An external ISO metric thread, e.g. M16x1.5.
#[derive(Debug, Clone, PartialEq)]
pub struct Thread {
    /// As written.
    pub designation: String,
    /// Major diameter in mm.
    pub major_mm: f64,
    /// Pitch in mm.
    pub pitch_mm: f64,
}

/// `d - d3` divided by the pitch, for the rounded root of an external thread in ISO 68-1 / ISO 724:
/// `17/24 · √3 · P = 1.22687 P`.
const ROOT_PER_PITCH: f64 = 1.226_87;

/// Smallest accepted ratio of minor to major diameter. Below it the text is taken for a mistake. The coarsest thread of
/// ISO 261 (M1) has 0.69.
const MINOR_SHARE_MIN: f64 = 0.5;

/// Finest accepted pitch, mm. The finest of ISO 261 is 0.2.
const PITCH_MIN_MM: f64 = 0.1;

/// Major diameter, coarse pitch, mm. From memory of ISO 261, not re-read.
const COARSE_MM: [(f64, f64); 40] = [
    (1.0, 0.25),
    (1.1, 0.25),
    (1.2, 0.25),
    (1.4, 0.3),
    (1.6, 0.35),
    (1.8, 0.35),
    (2.0, 0.4),
    (2.2, 0.45),
    (2.5, 0.45),
    (3.0, 0.5),
    (3.5, 0.6),
    (4.0, 0.7),
    (4.5, 0.75),
    (5.0, 0.8),
    (6.0, 1.0),
    (7.0, 1.0),
    (8.0, 1.25),
    (9.0, 1.25),
    (10.0, 1.5),
    (11.0, 1.5),
    (12.0, 1.75),
    (14.0, 2.0),
    (16.0, 2.0),
    (18.0, 2.5),
    (20.0, 2.5),
    (22.0, 2.5),
    (24.0, 3.0),
    (27.0, 3.0),
    (30.0, 3.5),
    (33.0, 3.5),
    (36.0, 4.0),
    (39.0, 4.0),
    (42.0, 4.5),
    (45.0, 4.5),
    (48.0, 5.0),
    (52.0, 5.0),
    (56.0, 5.5),
    (60.0, 5.5),
    (64.0, 6.0),
    (68.0, 6.0),
];

/// Fine pitches and the major diameters that have them, mm. From memory of ISO 261, not re-read.
const FINE_MM: [(f64, &[f64]); 9] = [
    (0.2, &[1.0, 1.1, 1.2, 1.4, 1.6, 1.8]),
    (0.25, &[2.0, 2.2]),
    (0.35, &[2.5, 3.0, 3.5]),
    (0.5, &[4.0, 4.5, 5.0, 5.5]),
    (0.75, &[6.0, 7.0, 8.0, 9.0, 10.0, 11.0]),
    (1.0, &[8.0, 9.0, 10.0, 11.0, 12.0, 14.0, 15.0, 16.0, 17.0, 18.0, 20.0, 22.0, 24.0, 25.0, 27.0, 28.0, 30.0]),
    (1.25, &[10.0, 12.0, 14.0]),
    (
        1.5,
        &[
            12.0, 14.0, 15.0, 16.0, 17.0, 18.0, 20.0, 22.0, 24.0, 25.0, 26.0, 27.0, 28.0, 30.0, 32.0, 33.0, 35.0, 36.0,
            38.0, 39.0, 40.0, 42.0, 45.0, 48.0, 50.0, 52.0, 55.0, 56.0, 58.0, 60.0,
        ],
    ),
    (
        2.0,
        &[
            18.0, 20.0, 22.0, 24.0, 25.0, 27.0, 28.0, 30.0, 32.0, 33.0, 36.0, 39.0, 40.0, 42.0, 45.0, 48.0, 50.0, 52.0,
            55.0, 56.0, 58.0, 60.0,
        ],
    ),
];

/// Coarse pitch of a major diameter in mm, if ISO 261 has one (from memory of ISO 261, not re-read).
pub fn coarse_pitch_mm(major_mm: f64) -> Option<f64> {
    COARSE_MM.iter().find(|(major, _)| *major == major_mm).map(|(_, pitch)| *pitch)
}

impl Thread {
    /// Whether ISO 261 has this diameter with this pitch, as a coarse pitch or as a fine pitch up to 2 mm (from memory,
    /// not re-read). Fine pitches above 2 mm, and those of diameters above 60 mm, are not in the table.
    ///
    /// ```
    /// use spanhold::job::thread::Thread;
    /// assert!(Thread::parse("M16x1.5")?.is_usual() && !Thread::parse("M16x1.4")?.is_usual());
    /// # Ok::<(), spanhold::diag::Diag>(())
    /// ```
    pub fn is_usual(&self) -> bool {
        let fine = FINE_MM.iter().find(|(pitch, _)| *pitch == self.pitch_mm);
        coarse_pitch_mm(self.major_mm) == Some(self.pitch_mm)
            || fine.is_some_and(|(_, majors)| majors.contains(&self.major_mm))
    }

    /// Minor diameter at the root, `d - 1.22687 P`, mm (ISO 68-1 / ISO 724, external root).
    pub fn minor_mm(&self) -> f64 {
        self.major_mm - ROOT_PER_PITCH * self.pitch_mm
    }

    /// Reads `M16x1.5`, or `M16` with the coarse pitch.
    ///
    /// - **Units**: mm.
    ///
    /// ```
    /// use spanhold::job::thread::Thread;
    /// assert_eq!(Thread::parse("M16")?.pitch_mm, 2.0);
    /// assert!((Thread::parse("M16x1.5")?.minor_mm() - 14.1597).abs() < 1e-4);
    /// # Ok::<(), spanhold::diag::Diag>(())
    /// ```
    ///
    /// # Errors
    /// The text is not of that form, the diameter has no coarse pitch, or the pitch is too fine or too coarse for the
    /// diameter.
    pub fn parse(text: &str) -> Result<Thread, Diag> {
        let plain: String = text.to_lowercase().replace('×', "x").chars().filter(|c| !c.is_whitespace()).collect();
        let rest = plain.strip_prefix('m').ok_or_else(|| unknown(text))?;
        let (major, pitch) = match rest.split_once('x') {
            Some((major, pitch)) => (number(major, text)?, Some(number(pitch, text)?)),
            None => (number(rest, text)?, None),
        };
        if major <= 0.0 {
            return Err(unknown(text));
        }
        let pitch_mm = match pitch.or_else(|| coarse_pitch_mm(major)) {
            Some(pitch) => pitch,
            None => {
                return Err(Diag::new(format!("M{major} has no coarse pitch in ISO 261"))
                    .help(format!("write the pitch: `M{major}x1`")));
            }
        };
        if pitch_mm < PITCH_MIN_MM {
            return Err(Diag::new(format!("`{text}`: a pitch of {pitch_mm} mm is too fine"))
                .help(format!("a pitch is at least {PITCH_MIN_MM} mm")));
        }
        let thread = Thread { designation: text.trim().to_owned(), major_mm: major, pitch_mm };
        if thread.minor_mm() < MINOR_SHARE_MIN * major {
            let coarse = match coarse_pitch_mm(major) {
                Some(coarse) => {
                    format!("the coarse pitch of M{major} is {coarse} mm: write `M{major}` or a finer pitch")
                }
                None => {
                    format!("write a finer pitch, at most {:.2} mm", (1.0 - MINOR_SHARE_MIN) * major / ROOT_PER_PITCH)
                }
            };
            return Err(Diag::new(format!(
                "`{text}`: a pitch of {pitch_mm} mm is too coarse for a diameter of {major} mm"
            ))
            .help(coarse));
        }
        Ok(thread)
    }
}

fn number(text: &str, whole: &str) -> Result<f64, Diag> {
    if text.is_empty() || !text.chars().all(|c| c.is_ascii_digit() || c == '.') {
        return Err(unknown(whole));
    }
    text.parse().map_err(|_| unknown(whole))
}

fn unknown(text: &str) -> Diag {
    Diag::new(format!("`{text}` is not a metric thread"))
        .help("write the major diameter and the pitch, `M16x1.5`, or `M16` for the coarse pitch")
}

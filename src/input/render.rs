//! The long form of diagnostics: path, line, column, the line itself with a marker, and what to write instead.

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Origin, Renderer, Snippet};

use crate::diag::{Diag, Place};
use crate::shown;

/// A longer line is not shown, because nobody finds anything in it.
const LINE_MAX_BYTES: usize = 400;

/// All diagnostics in the long form, without colour, separated by empty lines.
///
/// ```
/// let diags = spanhold::input::read_job_text("job.yaml", "shaft: {nmae: spindle}\n", ".".as_ref()).unwrap_err();
/// let text = spanhold::input::render(&diags);
/// assert!(text.contains("job.yaml:1:9") && text.contains("did you mean `name`?"));
/// ```
pub fn render(diags: &[Diag]) -> String {
    let renderer = Renderer::plain().decor_style(DecorStyle::Ascii);
    let mut out = String::new();
    for diag in diags {
        if !out.is_empty() {
            out.push('\n');
        }
        out.push_str(renderer.render(&[group(diag)]).trim_end());
        out.push('\n');
    }
    out
}

fn group(diag: &Diag) -> Group<'_> {
    let title = Level::ERROR.primary_title(shown::line(&diag.what));
    let mut group = match &diag.place {
        Some(place) => located(Group::with_title(title), place),
        None => Group::with_title(title),
    };
    if let Some(help) = &diag.help {
        group = group.element(Level::HELP.message(shown::line(help)));
    }
    group
}

fn located<'a>(group: Group<'a>, place: &'a Place) -> Group<'a> {
    let path = shown::line(&place.source.path.display().to_string()).into_owned();
    let text = &place.source.text;
    let line_start = text.get(..place.start).and_then(|before| before.rfind('\n')).map_or(0, |i| i + 1);
    let line = text.get(line_start..).unwrap_or_default().lines().next().unwrap_or_default();
    let from = place.start.saturating_sub(line_start).min(line.len());
    let to = place.end.saturating_sub(line_start).clamp(from, line.len());
    let parts = (line.get(..from), line.get(from..to), line.get(to..));
    let ((Some(before), Some(marked), Some(behind)), true) =
        (parts, !line.trim().is_empty() && line.len() <= LINE_MAX_BYTES)
    else {
        return group.element(Origin::path(path).line(place.line).char_column(place.column));
    };
    // Writing out control characters makes the line longer, so the marker is placed in the line as it is shown.
    let [before, marked, behind] = [before, marked, behind].map(shown::lines);
    let span = before.len()..before.len() + marked.len();
    let line = format!("{before}{marked}{behind}");
    group
        .element(Snippet::source(line).line_start(place.line).path(path).annotation(AnnotationKind::Primary.span(span)))
}

//! The page: one HTML file with its own style, in black and white, for A4 or letter paper.

use maud::{DOCTYPE, Markup, PreEscaped, html};

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Paper {
    /// ISO 216: 210 mm by 297 mm.
    #[default]
    A4,
    /// 8.5 in by 11 in.
    Letter,
}

impl Paper {
    const fn css(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "letter",
        }
    }
}

/// What stands at the foot of each page beside its number.
const MADE_WITH: &str = "Heftwise";

/// A whole file of `sheets`, each starting on a page of its own.
pub fn file(title: &str, paper: Paper, sheets: &[Markup]) -> String {
    let style = format!(
        "@page{{size:{} portrait;margin:18mm 16mm;\
         @bottom-left{{content:\"{} \u{b7} {MADE_WITH}\";font:9pt sans-serif}}\
         @bottom-right{{content:counter(page) \" / \" counter(pages);font:9pt sans-serif}}}}{STYLE}",
        paper.css(),
        in_css(title),
    );
    let page = html! {
        (DOCTYPE)
        html lang="en-GB" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                // Nothing is fetched: no font, no script, no picture from elsewhere.
                meta http-equiv="Content-Security-Policy"
                    content="default-src 'none'; style-src 'unsafe-inline'; img-src data:";
                title { (title) }
                style { (PreEscaped(style)) }
            }
            body {
                @for sheet in sheets {
                    section.sheet { (sheet) }
                }
            }
        }
    };
    page.into_string()
}

/// A text inside a CSS string.
fn in_css(text: &str) -> String {
    text.chars()
        .map(|letter| match letter {
            '"' | '\\' | '<' | '>' | '&' => ' ',
            letter if letter.is_control() => ' ',
            letter => letter,
        })
        .collect()
}

/// Lines carry the meaning: browsers leave backgrounds out when they print.
const STYLE: &str = "
*{box-sizing:border-box}
body{margin:0 auto;max-width:178mm;padding:6mm 0;color:#000;background:#fff;
font:11pt/1.4 'IBM Plex Sans',Arial,Helvetica,sans-serif}
@media print{body{max-width:none;padding:0}}
.sheet{break-before:page}
.sheet:first-child{break-before:auto}
h1{font-size:20pt;line-height:1.2;margin:0 0 3mm}
h2{font-size:14pt;margin:6mm 0 2mm;break-after:avoid}
h3{font-size:12pt;margin:4mm 0 1.5mm;break-after:avoid}
p{margin:0 0 2mm;orphans:3;widows:3}
ul,ol{margin:0 0 2mm;padding-left:6mm}
li{margin-bottom:1mm}
li>p{margin-bottom:.5mm}
table{border-collapse:collapse;width:100%;margin:1mm 0 3mm;break-inside:avoid}
th,td{border:.3mm solid #000;padding:1mm 2mm;text-align:left;vertical-align:top}
th{border-bottom-width:.6mm}
tr{break-inside:avoid}
td.write{height:8mm;min-width:22mm}
.long tbody{break-inside:auto}
table.long{break-inside:auto}
.box{border:.4mm solid #000;padding:2.5mm 3mm;margin:2mm 0 3mm;break-inside:avoid}
.box>h3:first-child,.box>p:first-child{margin-top:0}
.box>:last-child{margin-bottom:0}
.caution{border-width:1mm;border-style:solid}
.kind{font-weight:700;text-transform:uppercase;letter-spacing:.04em;font-size:10pt}
.tick{display:inline-block;width:4mm;height:4mm;border:.4mm solid #000;margin-right:2mm;
vertical-align:-.6mm}
.lines{border-bottom:.25mm solid #000;height:8mm;display:block}
.gap{display:inline-block;min-width:26mm;border-bottom:.3mm solid #000;height:5.5mm}
.twin{display:grid;grid-template-columns:1fr 1fr;gap:3mm}
.twin>div{border:.3mm solid #000;padding:2mm}
figure{margin:2mm 0 3mm;break-inside:avoid;text-align:center}
figure svg,figure img{max-width:100%;height:auto;max-height:75mm}
figure.tall svg{max-height:150mm}
figcaption{font-size:9.5pt;text-align:left;margin-top:1mm}
.formula{text-align:center;margin:2mm 0;break-inside:avoid}
.small{font-size:9.5pt}
.dense{font-size:8pt;line-height:1.25}
.dense th,.dense td{padding:.4mm 1.2mm}
.dense .small{font-size:inherit}
.columns{columns:3;column-gap:5mm;font-size:7.5pt;line-height:1.25}
.head{display:flex;justify-content:space-between;gap:4mm;font-size:10pt;margin-bottom:3mm}
.who{flex:1;border-bottom:.3mm solid #000}
.right{font-weight:700}
";

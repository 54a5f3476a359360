"""Examples of the CommonMark Spec and of the tables of the GitHub Flavored Markdown Spec, as JSON.

Writes commonmark.json beside this file: for each example its number, the Markdown and the HTML that the spec
gives for it. Run: python commonmark.py spec.txt gfm.txt
with spec.txt of the CommonMark Spec 0.31.2 by John MacFarlane, 2024-01-28 (https://spec.commonmark.org/0.31.2/),
and gfm.txt, the section "Tables (extension)" of the GitHub Flavored Markdown Spec 0.29-gfm, 2019-04-06
(https://github.github.com/gfm/#tables-extension-). Both specs are under CC-BY-SA 4.0
(https://creativecommons.org/licenses/by-sa/4.0/), and so is commonmark.json; it is test data and not
part of the program. Last run 2026-11-25, gfm.txt with the eight examples as the tests of pulldown-cmark
0.13.6 carry them.
"""
import json
import pathlib
import re
import sys

FENCE = "`" * 32


def examples(path, label):
    text = pathlib.Path(path).read_text(encoding="utf-8")
    found = re.findall(rf"^{FENCE} example(?: \w+)?\n(.*?)^\.\n(.*?)^{FENCE}$", text, re.M | re.S)
    return [
        {"example": f"{label} {number}", "markdown": a.replace("→", "\t"), "html": b.replace("→", "\t")}
        for number, (a, b) in enumerate(found, 1)
    ]


here = pathlib.Path(__file__).parent
whole = {
    "source": "CommonMark Spec 0.31.2 by John MacFarlane; GitHub Flavored Markdown Spec 0.29-gfm, tables",
    "licence": "CC-BY-SA 4.0, https://creativecommons.org/licenses/by-sa/4.0/",
    "examples": examples(sys.argv[1], "CommonMark") + examples(sys.argv[2], "GFM tables"),
}
text = json.dumps(whole, ensure_ascii=False, indent=0)
(here / "commonmark.json").write_text(text + "\n", encoding="utf-8")

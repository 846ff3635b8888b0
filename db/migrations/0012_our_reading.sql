-- Only a table made anew can allow one more mark. Foreign keys are off while farms are brought up to date. The next number of a row stays what it was.
CREATE TABLE `__new_crop` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`scientific` text NOT NULL,
	`shape` text NOT NULL,
	`roles` text NOT NULL,
	`usual_role` text NOT NULL,
	`tender` integer NOT NULL,
	`overwinters` integer NOT NULL,
	`hold_days` real NOT NULL,
	`hold_days_mark` text NOT NULL,
	`hold_days_source` text,
	`field_days` real NOT NULL,
	`field_days_mark` text NOT NULL,
	`field_days_source` text,
	`bunch_stems` integer NOT NULL,
	`bunch_stems_mark` text NOT NULL,
	`bunch_stems_source` text,
	`bucket_stems` integer NOT NULL,
	`bucket_stems_mark` text NOT NULL,
	`bucket_stems_source` text,
	`buy_in_cents` integer NOT NULL,
	`buy_in_cents_mark` text NOT NULL,
	`buy_in_cents_source` text,
	`cut_stage` text NOT NULL,
	`cautions` text NOT NULL,
	CONSTRAINT "crop_name" CHECK(name <> ''),
	CONSTRAINT "crop_shape" CHECK(shape IN ('line', 'mass', 'form', 'filler', 'foliage')),
	CONSTRAINT "crop_roles" CHECK(CASE WHEN json_valid(roles) THEN json_type(roles) = 'array' ELSE 0 END),
	CONSTRAINT "crop_usual_role" CHECK(usual_role IN ('focal', 'secondary', 'line', 'filler', 'foliage', 'accent')),
	CONSTRAINT "crop_tender" CHECK(tender IN (0, 1)),
	CONSTRAINT "crop_overwinters" CHECK(overwinters IN (0, 1)),
	CONSTRAINT "crop_hold_days" CHECK(hold_days BETWEEN 0 AND 1e300),
	CONSTRAINT "crop_field_days" CHECK(field_days BETWEEN 0 AND 1e300),
	CONSTRAINT "crop_bunch_stems" CHECK(bunch_stems BETWEEN 1 AND 1e15 AND bunch_stems = CAST(bunch_stems AS INTEGER)),
	CONSTRAINT "crop_bucket_stems" CHECK(bucket_stems BETWEEN 1 AND 1e15 AND bucket_stems = CAST(bucket_stems AS INTEGER)),
	CONSTRAINT "crop_buy_in_cents" CHECK(buy_in_cents BETWEEN 1 AND 1e15 AND buy_in_cents = CAST(buy_in_cents AS INTEGER)),
	CONSTRAINT "crop_hold_days_mark" CHECK(hold_days_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_field_days_mark" CHECK(field_days_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_bunch_stems_mark" CHECK(bunch_stems_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_bucket_stems_mark" CHECK(bucket_stems_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_buy_in_cents_mark" CHECK(buy_in_cents_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_cautions" CHECK(CASE WHEN json_valid(cautions) THEN json_type(cautions) = 'array' ELSE 0 END)
);
--> statement-breakpoint
INSERT INTO `__new_crop`("id", "name", "scientific", "shape", "roles", "usual_role", "tender", "overwinters", "hold_days", "hold_days_mark", "hold_days_source", "field_days", "field_days_mark", "field_days_source", "bunch_stems", "bunch_stems_mark", "bunch_stems_source", "bucket_stems", "bucket_stems_mark", "bucket_stems_source", "buy_in_cents", "buy_in_cents_mark", "buy_in_cents_source", "cut_stage", "cautions") SELECT "id", "name", "scientific", "shape", "roles", "usual_role", "tender", "overwinters", "hold_days", "hold_days_mark", "hold_days_source", "field_days", "field_days_mark", "field_days_source", "bunch_stems", "bunch_stems_mark", "bunch_stems_source", "bucket_stems", "bucket_stems_mark", "bucket_stems_source", "buy_in_cents", "buy_in_cents_mark", "buy_in_cents_source", "cut_stage", "cautions" FROM `crop`;--> statement-breakpoint
DELETE FROM sqlite_sequence WHERE name = '__new_crop';--> statement-breakpoint
INSERT INTO sqlite_sequence (name, seq) SELECT '__new_crop', seq FROM sqlite_sequence WHERE name = 'crop';--> statement-breakpoint
DROP TABLE `crop`;--> statement-breakpoint
ALTER TABLE `__new_crop` RENAME TO `crop`;--> statement-breakpoint
CREATE UNIQUE INDEX `crop_name_once` ON `crop` (`name`);--> statement-breakpoint
CREATE TABLE `__new_bloom_curve` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`crop_id` integer NOT NULL,
	`variety_id` integer,
	`treatment` text NOT NULL,
	`anchor_kind` text NOT NULL,
	`first_cut` text,
	`days_after_planting` integer,
	`stems_per_plant_by_week` text NOT NULL,
	`first_cut_spread_days` real NOT NULL,
	`yield_spread` real NOT NULL,
	`timing_mark` text NOT NULL,
	`timing_source` text,
	`yield_mark` text NOT NULL,
	`yield_source` text,
	`note` text NOT NULL,
	`heat_base_c` real,
	`heat_ceiling_c` real,
	`heat_from` text,
	`heat_place` text,
	`heat_mark` text DEFAULT 'own' NOT NULL,
	`heat_source` text,
	`ends` text DEFAULT 'weeks' NOT NULL,
	`end_high_c` real,
	`sowing_days` integer,
	`share_by_age` text DEFAULT '[]' NOT NULL,
	`planting_id` integer,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`planting_id`) REFERENCES `planting`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`,`crop_id`) REFERENCES `variety`(`id`,`crop_id`) ON UPDATE cascade ON DELETE cascade,
	CONSTRAINT "bloom_curve_treatment" CHECK(treatment IN ('field', 'spring-planted', 'kept-in-ground', 'autumn-planted', 'tunnel')),
	CONSTRAINT "bloom_curve_anchor" CHECK((anchor_kind = 'day-of-year' AND first_cut IS NOT NULL AND days_after_planting IS NULL) OR (anchor_kind = 'days-after-planting' AND first_cut IS NULL AND days_after_planting IS NOT NULL)),
	CONSTRAINT "bloom_curve_of_planting" CHECK(planting_id IS NULL OR variety_id IS NOT NULL),
	CONSTRAINT "bloom_curve_first_cut" CHECK(first_cut GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || first_cut) IS '2027-' || first_cut),
	CONSTRAINT "bloom_curve_days_after_planting" CHECK(days_after_planting BETWEEN 0 AND 1e15 AND days_after_planting = CAST(days_after_planting AS INTEGER)),
	CONSTRAINT "bloom_curve_stems_per_plant_by_week" CHECK(CASE WHEN json_valid(stems_per_plant_by_week) THEN json_type(stems_per_plant_by_week) = 'array' ELSE 0 END),
	CONSTRAINT "bloom_curve_first_cut_spread_days" CHECK(first_cut_spread_days BETWEEN 0 AND 1e300),
	CONSTRAINT "bloom_curve_yield_spread" CHECK(yield_spread BETWEEN 0 AND 1e300),
	CONSTRAINT "bloom_curve_timing_mark" CHECK(timing_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "bloom_curve_yield_mark" CHECK(yield_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "bloom_curve_ends" CHECK(ends IN ('weeks', 'frost', 'heat') AND (ends = 'heat') = (end_high_c IS NOT NULL)),
	CONSTRAINT "bloom_curve_share_by_age" CHECK(CASE WHEN json_valid(share_by_age) THEN json_type(share_by_age) = 'array' ELSE 0 END),
	CONSTRAINT "bloom_curve_sowing_days" CHECK(sowing_days BETWEEN 0 AND 1e15 AND sowing_days = CAST(sowing_days AS INTEGER)),
	CONSTRAINT "bloom_curve_heat_from" CHECK(heat_from GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || heat_from) IS '2027-' || heat_from),
	CONSTRAINT "bloom_curve_heat_mark" CHECK(heat_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own')),
	CONSTRAINT "bloom_curve_heat" CHECK((heat_base_c IS NULL) = (heat_from IS NULL) AND (heat_ceiling_c IS NULL OR (heat_base_c IS NOT NULL AND heat_ceiling_c > heat_base_c)))
);
--> statement-breakpoint
INSERT INTO `__new_bloom_curve`("id", "crop_id", "variety_id", "treatment", "anchor_kind", "first_cut", "days_after_planting", "stems_per_plant_by_week", "first_cut_spread_days", "yield_spread", "timing_mark", "timing_source", "yield_mark", "yield_source", "note", "heat_base_c", "heat_ceiling_c", "heat_from", "heat_place", "heat_mark", "heat_source", "ends", "end_high_c", "sowing_days", "share_by_age", "planting_id") SELECT "id", "crop_id", "variety_id", "treatment", "anchor_kind", "first_cut", "days_after_planting", "stems_per_plant_by_week", "first_cut_spread_days", "yield_spread", "timing_mark", "timing_source", "yield_mark", "yield_source", "note", "heat_base_c", "heat_ceiling_c", "heat_from", "heat_place", "heat_mark", "heat_source", "ends", "end_high_c", "sowing_days", "share_by_age", "planting_id" FROM `bloom_curve`;--> statement-breakpoint
DELETE FROM sqlite_sequence WHERE name = '__new_bloom_curve';--> statement-breakpoint
INSERT INTO sqlite_sequence (name, seq) SELECT '__new_bloom_curve', seq FROM sqlite_sequence WHERE name = 'bloom_curve';--> statement-breakpoint
DROP TABLE `bloom_curve`;--> statement-breakpoint
ALTER TABLE `__new_bloom_curve` RENAME TO `bloom_curve`;--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_crop_once` ON `bloom_curve` (`crop_id`,`treatment`) WHERE variety_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_variety_once` ON `bloom_curve` (`variety_id`,`treatment`) WHERE planting_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_planting_once` ON `bloom_curve` (`planting_id`,`treatment`);--> statement-breakpoint
-- Built-in figures that were called published, and are our reading of what is published: no number changes.
UPDATE `bloom_curve` SET timing_mark = 'our reading' WHERE timing_mark = 'published' AND timing_source IN ('PEONY-USU', 'USU-RANU', 'ANEM-2023', 'CORNELL-2010', 'SNAP-LEWIS', 'USU-LISI', 'USU-DELTH');--> statement-breakpoint
UPDATE `bloom_curve` SET yield_mark = 'our reading' WHERE yield_mark = 'published' AND yield_source IN ('PEONY-USU', 'USU-RANU', 'USU-ANEM', 'ANEM-2023', 'SNAP-LEWIS', 'WIEN-2016', 'USU-DELTH');--> statement-breakpoint
UPDATE `bloom_curve` SET heat_mark = 'our reading' WHERE heat_mark = 'published' AND heat_source = 'GLAD-2017';--> statement-breakpoint
UPDATE `crop` SET hold_days_mark = 'our reading' WHERE hold_days_mark = 'trade' AND hold_days_source = 'GPN-SUBZERO';--> statement-breakpoint
UPDATE `crop` SET buy_in_cents_mark = 'our reading' WHERE buy_in_cents_mark = 'published' AND buy_in_cents_source = 'ASCFG-2021';

CREATE TABLE `tally` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`cut_on` text NOT NULL,
	`bed_id` integer NOT NULL,
	`variety_id` integer NOT NULL,
	`asked` text NOT NULL,
	`stems_cut` integer NOT NULL,
	`counted_at` text NOT NULL,
	`counted_by` text,
	`taken_at` integer NOT NULL,
	`corrected_at` integer,
	`is_apart` integer DEFAULT false NOT NULL,
	FOREIGN KEY (`bed_id`) REFERENCES `bed`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "tally_cut_on" CHECK(cut_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(cut_on) IS cut_on),
	CONSTRAINT "tally_stems_cut" CHECK(stems_cut BETWEEN 0 AND 1e15 AND stems_cut = CAST(stems_cut AS INTEGER)),
	CONSTRAINT "tally_taken_at" CHECK(taken_at BETWEEN 0 AND 1e15 AND taken_at = CAST(taken_at AS INTEGER)),
	CONSTRAINT "tally_corrected_at" CHECK(corrected_at BETWEEN 0 AND 1e15 AND corrected_at = CAST(corrected_at AS INTEGER)),
	CONSTRAINT "tally_asked" CHECK(CASE WHEN json_valid(asked) THEN json_type(asked) = 'array' ELSE 0 END),
	CONSTRAINT "tally_is_apart" CHECK(is_apart IN (0, 1))
);
--> statement-breakpoint
CREATE INDEX `tally_place` ON `tally` (`cut_on`,`bed_id`,`variety_id`);--> statement-breakpoint
CREATE INDEX `tally_bed` ON `tally` (`bed_id`);--> statement-breakpoint
CREATE INDEX `tally_variety` ON `tally` (`variety_id`);
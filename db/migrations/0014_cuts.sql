CREATE TABLE `cut` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`cut_on` text NOT NULL,
	`bed_id` integer NOT NULL,
	`variety_id` integer NOT NULL,
	`booking_id` integer,
	`stems_cut` integer NOT NULL,
	`stems_asked` integer,
	`good_stems` integer,
	FOREIGN KEY (`bed_id`) REFERENCES `bed`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "cut_cut_on" CHECK(cut_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(cut_on) IS cut_on),
	CONSTRAINT "cut_stems_cut" CHECK(stems_cut BETWEEN 0 AND 1e15 AND stems_cut = CAST(stems_cut AS INTEGER)),
	CONSTRAINT "cut_stems_asked" CHECK(stems_asked BETWEEN 0 AND 1e15 AND stems_asked = CAST(stems_asked AS INTEGER)),
	CONSTRAINT "cut_good_stems" CHECK(good_stems BETWEEN 0 AND 1e15 AND good_stems = CAST(good_stems AS INTEGER)),
	CONSTRAINT "cut_good_within_cut" CHECK(good_stems <= stems_cut)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `cut_once` ON `cut` (`cut_on`,`bed_id`,`variety_id`,`booking_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `cut_for_nobody_once` ON `cut` (`cut_on`,`bed_id`,`variety_id`) WHERE booking_id IS NULL;--> statement-breakpoint
CREATE INDEX `cut_bed` ON `cut` (`bed_id`);--> statement-breakpoint
CREATE INDEX `cut_variety` ON `cut` (`variety_id`);--> statement-breakpoint
CREATE INDEX `cut_booking` ON `cut` (`booking_id`);
CREATE TABLE `bud_look` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`looked_on` text NOT NULL,
	`bed_id` integer NOT NULL,
	`variety_id` integer NOT NULL,
	`sign` text NOT NULL,
	`days_to_cut` integer,
	FOREIGN KEY (`bed_id`) REFERENCES `bed`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "bud_look_looked_on" CHECK(looked_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(looked_on) IS looked_on),
	CONSTRAINT "bud_look_sign" CHECK(sign IN ('first bloom', 'buds showing', 'early', 'as due', 'late')),
	CONSTRAINT "bud_look_days_to_cut" CHECK(days_to_cut BETWEEN 0 AND 1e15 AND days_to_cut = CAST(days_to_cut AS INTEGER))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `bud_look_once` ON `bud_look` (`looked_on`,`bed_id`,`variety_id`);--> statement-breakpoint
CREATE INDEX `bud_look_bed` ON `bud_look` (`bed_id`);--> statement-breakpoint
CREATE INDEX `bud_look_variety` ON `bud_look` (`variety_id`);
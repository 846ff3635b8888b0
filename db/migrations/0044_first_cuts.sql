CREATE TABLE `first_cut` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`crop_id` integer NOT NULL,
	`variety_id` integer,
	`treatment` text NOT NULL,
	`season_year` integer NOT NULL,
	`planted_on` text,
	`first_cut` text NOT NULL,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`,`crop_id`) REFERENCES `variety`(`id`,`crop_id`) ON UPDATE cascade ON DELETE cascade,
	CONSTRAINT "first_cut_treatment" CHECK(treatment IN ('field', 'spring-planted', 'kept-in-ground', 'autumn-planted', 'tunnel')),
	CONSTRAINT "first_cut_season_year" CHECK(season_year BETWEEN 1700 AND 1e15 AND season_year = CAST(season_year AS INTEGER)),
	CONSTRAINT "first_cut_planted_on" CHECK(planted_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(planted_on) IS planted_on),
	CONSTRAINT "first_cut_first_cut" CHECK(first_cut GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(first_cut) IS first_cut),
	CONSTRAINT "first_cut_planted_before" CHECK(planted_on IS NULL OR planted_on < first_cut)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `first_cut_once` ON `first_cut` (`crop_id`,`treatment`,`season_year`) WHERE variety_id IS NULL AND planted_on IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `first_cut_planted_once` ON `first_cut` (`crop_id`,`treatment`,`season_year`,`planted_on`) WHERE variety_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `first_cut_of_variety_once` ON `first_cut` (`variety_id`,`treatment`,`season_year`) WHERE planted_on IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `first_cut_of_variety_planted_once` ON `first_cut` (`variety_id`,`treatment`,`season_year`,`planted_on`);
CREATE TABLE `cooler_move` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`moved_on` text NOT NULL,
	`variety_id` integer NOT NULL,
	`cut_on` text NOT NULL,
	`kind` text NOT NULL,
	`stem_count` integer NOT NULL,
	`booking_id` integer,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "cooler_move_moved_on" CHECK(moved_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(moved_on) IS moved_on),
	CONSTRAINT "cooler_move_cut_on" CHECK(cut_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(cut_on) IS cut_on),
	CONSTRAINT "cooler_move_kind" CHECK(kind IN ('taken out', 'thrown away')),
	CONSTRAINT "cooler_move_stem_count" CHECK(stem_count BETWEEN 1 AND 1e15 AND stem_count = CAST(stem_count AS INTEGER))
);
--> statement-breakpoint
CREATE INDEX `cooler_move_variety` ON `cooler_move` (`variety_id`);--> statement-breakpoint
CREATE INDEX `cooler_move_booking` ON `cooler_move` (`booking_id`);
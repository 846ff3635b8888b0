CREATE TABLE `booking_promise` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`booking_id` integer NOT NULL,
	`position` integer NOT NULL,
	`role` text NOT NULL,
	`crop_id` integer,
	`crop_only` integer NOT NULL,
	`colours` text NOT NULL,
	`stem_count` integer NOT NULL,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "booking_promise_position" CHECK(position BETWEEN 0 AND 1e15 AND position = CAST(position AS INTEGER)),
	CONSTRAINT "booking_promise_role" CHECK(role IN ('focal', 'secondary', 'line', 'filler', 'foliage', 'accent')),
	CONSTRAINT "booking_promise_crop_only" CHECK(crop_only IN (0, 1)),
	CONSTRAINT "booking_promise_colours" CHECK(CASE WHEN json_valid(colours) THEN json_type(colours) = 'array' ELSE 0 END),
	CONSTRAINT "booking_promise_stem_count" CHECK(stem_count BETWEEN 1 AND 1e15 AND stem_count = CAST(stem_count AS INTEGER))
);
--> statement-breakpoint
CREATE INDEX `booking_promise_crop` ON `booking_promise` (`crop_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `booking_promise_place` ON `booking_promise` (`booking_id`,`position`);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `promise_loss_cents` integer CONSTRAINT "farm_promise_loss_cents" CHECK(promise_loss_cents BETWEEN 0 AND 1e15 AND promise_loss_cents = CAST(promise_loss_cents AS INTEGER));

CREATE TABLE `standing_order` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`buyer` text NOT NULL,
	`kind` text NOT NULL,
	`weekday` integer NOT NULL,
	`first_on` text NOT NULL,
	`last_on` text NOT NULL,
	`role` text,
	`crop_id` integer,
	`recipe_id` integer,
	`colours` text NOT NULL,
	`asked_count` real NOT NULL,
	`stem_cents` integer NOT NULL,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`recipe_id`) REFERENCES `recipe`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "standing_order_buyer" CHECK(buyer <> ''),
	CONSTRAINT "standing_order_kind" CHECK(kind IN ('subscription', 'market', 'florist')),
	CONSTRAINT "standing_order_weekday" CHECK(weekday BETWEEN 1 AND 7 AND weekday = CAST(weekday AS INTEGER)),
	CONSTRAINT "standing_order_first_on" CHECK(first_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(first_on) IS first_on),
	CONSTRAINT "standing_order_last_on" CHECK(last_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(last_on) IS last_on),
	CONSTRAINT "standing_order_days_in_order" CHECK(first_on <= last_on),
	CONSTRAINT "standing_order_role" CHECK(role IN ('focal', 'secondary', 'line', 'filler', 'foliage', 'accent')),
	CONSTRAINT "standing_order_stems_or_pieces" CHECK((role IS NULL) <> (recipe_id IS NULL)),
	CONSTRAINT "standing_order_colours" CHECK(CASE WHEN json_valid(colours) THEN json_type(colours) = 'array' ELSE 0 END),
	CONSTRAINT "standing_order_asked_count" CHECK(asked_count > 0 AND asked_count <= 1e300),
	CONSTRAINT "standing_order_stem_cents" CHECK(stem_cents BETWEEN 0 AND 1e15 AND stem_cents = CAST(stem_cents AS INTEGER))
);
--> statement-breakpoint
CREATE INDEX `standing_order_crop` ON `standing_order` (`crop_id`);--> statement-breakpoint
CREATE INDEX `standing_order_recipe` ON `standing_order` (`recipe_id`);
CREATE TABLE `review` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`booking_id` integer NOT NULL,
	`role` text NOT NULL,
	`planned_stems` integer NOT NULL,
	`cut_stems` integer NOT NULL,
	`bought_stems` integer NOT NULL,
	`thrown_away_stems` integer NOT NULL,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "review_role" CHECK(role IN ('focal', 'secondary', 'line', 'filler', 'foliage', 'accent')),
	CONSTRAINT "review_planned_stems" CHECK(planned_stems BETWEEN 0 AND 1e15 AND planned_stems = CAST(planned_stems AS INTEGER)),
	CONSTRAINT "review_cut_stems" CHECK(cut_stems BETWEEN 0 AND 1e15 AND cut_stems = CAST(cut_stems AS INTEGER)),
	CONSTRAINT "review_bought_stems" CHECK(bought_stems BETWEEN 0 AND 1e15 AND bought_stems = CAST(bought_stems AS INTEGER)),
	CONSTRAINT "review_thrown_away_stems" CHECK(thrown_away_stems BETWEEN 0 AND 1e15 AND thrown_away_stems = CAST(thrown_away_stems AS INTEGER)),
	CONSTRAINT "review_thrown_away_within_had" CHECK(thrown_away_stems <= cut_stems + bought_stems)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `review_once` ON `review` (`booking_id`,`role`);--> statement-breakpoint
ALTER TABLE `booking` ADD `price_cents` integer CONSTRAINT "booking_price_cents" CHECK(price_cents BETWEEN 0 AND 1e15 AND price_cents = CAST(price_cents AS INTEGER));
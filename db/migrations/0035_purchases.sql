CREATE TABLE `purchase` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`supplier` text NOT NULL,
	`ordered_on` text NOT NULL,
	`arrives_on` text NOT NULL,
	`variety_id` integer NOT NULL,
	`bunch_count` integer NOT NULL,
	`bunch_stems` integer NOT NULL,
	`bunch_cents` integer,
	`days_to_open` integer NOT NULL,
	`booking_id` integer,
	`stems_for_booking` integer NOT NULL,
	`arrived_on` text,
	`arrived_stems` integer,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "purchase_supplier" CHECK(supplier <> ''),
	CONSTRAINT "purchase_ordered_on" CHECK(ordered_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(ordered_on) IS ordered_on),
	CONSTRAINT "purchase_arrives_on" CHECK(arrives_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(arrives_on) IS arrives_on),
	CONSTRAINT "purchase_bunch_count" CHECK(bunch_count BETWEEN 1 AND 1e15 AND bunch_count = CAST(bunch_count AS INTEGER)),
	CONSTRAINT "purchase_bunch_stems" CHECK(bunch_stems BETWEEN 1 AND 1e15 AND bunch_stems = CAST(bunch_stems AS INTEGER)),
	CONSTRAINT "purchase_bunch_cents" CHECK(bunch_cents BETWEEN 0 AND 1e15 AND bunch_cents = CAST(bunch_cents AS INTEGER)),
	CONSTRAINT "purchase_days_to_open" CHECK(days_to_open BETWEEN 0 AND 1e15 AND days_to_open = CAST(days_to_open AS INTEGER)),
	CONSTRAINT "purchase_stems_for_booking" CHECK(stems_for_booking BETWEEN 0 AND 1e15 AND stems_for_booking = CAST(stems_for_booking AS INTEGER)),
	CONSTRAINT "purchase_arrived_on" CHECK(arrived_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(arrived_on) IS arrived_on),
	CONSTRAINT "purchase_arrived_stems" CHECK(arrived_stems BETWEEN 0 AND 1e15 AND arrived_stems = CAST(arrived_stems AS INTEGER)),
	CONSTRAINT "purchase_days_in_order" CHECK(ordered_on <= arrives_on),
	CONSTRAINT "purchase_arrived_both" CHECK((arrived_on IS NULL) = (arrived_stems IS NULL))
);
--> statement-breakpoint
CREATE INDEX `purchase_variety` ON `purchase` (`variety_id`);--> statement-breakpoint
CREATE INDEX `purchase_booking` ON `purchase` (`booking_id`);
CREATE TABLE `bed` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`length_metres` real NOT NULL,
	`width_metres` real NOT NULL,
	`flags` text NOT NULL,
	`no_entry_from` text,
	`no_entry_until` text,
	`note` text NOT NULL,
	CONSTRAINT "bed_name" CHECK(name <> ''),
	CONSTRAINT "bed_length_metres" CHECK(length_metres > 0 AND length_metres <= 1e300),
	CONSTRAINT "bed_width_metres" CHECK(width_metres > 0 AND width_metres <= 1e300),
	CONSTRAINT "bed_flags" CHECK(CASE WHEN json_valid(flags) THEN json_type(flags) = 'array' ELSE 0 END),
	CONSTRAINT "bed_no_entry_from" CHECK(no_entry_from GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(no_entry_from) IS no_entry_from),
	CONSTRAINT "bed_no_entry_until" CHECK(no_entry_until GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(no_entry_until) IS no_entry_until),
	CONSTRAINT "bed_spray_days" CHECK((no_entry_from IS NULL) = (no_entry_until IS NULL) AND coalesce(no_entry_until > no_entry_from, 1))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `bed_name_once` ON `bed` (`name`);--> statement-breakpoint
CREATE TABLE `cooler_stock` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`variety_id` integer NOT NULL,
	`cut_on` text NOT NULL,
	`stem_count` integer NOT NULL,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "cooler_stock_cut_on" CHECK(cut_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(cut_on) IS cut_on),
	CONSTRAINT "cooler_stock_stem_count" CHECK(stem_count BETWEEN 0 AND 1e15 AND stem_count = CAST(stem_count AS INTEGER))
);
--> statement-breakpoint
CREATE INDEX `cooler_stock_variety` ON `cooler_stock` (`variety_id`);--> statement-breakpoint
CREATE TABLE `planting` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`bed_id` integer NOT NULL,
	`variety_id` integer NOT NULL,
	`season_year` integer NOT NULL,
	`treatment` text NOT NULL,
	`planted_on` text NOT NULL,
	`plant_count` integer NOT NULL,
	`alive_share` real NOT NULL,
	`grade_out_share` real NOT NULL,
	`winter_survival_share` real,
	`flags` text NOT NULL,
	FOREIGN KEY (`bed_id`) REFERENCES `bed`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "planting_season_year" CHECK(season_year BETWEEN 1990 AND 1e15 AND season_year = CAST(season_year AS INTEGER)),
	CONSTRAINT "planting_treatment" CHECK(treatment IN ('field', 'spring-planted', 'kept-in-ground', 'autumn-planted', 'tunnel')),
	CONSTRAINT "planting_planted_on" CHECK(planted_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(planted_on) IS planted_on),
	CONSTRAINT "planting_plant_count" CHECK(plant_count BETWEEN 0 AND 1e15 AND plant_count = CAST(plant_count AS INTEGER)),
	CONSTRAINT "planting_alive_share" CHECK(alive_share BETWEEN 0 AND 1),
	CONSTRAINT "planting_grade_out_share" CHECK(grade_out_share BETWEEN 0 AND 1),
	CONSTRAINT "planting_winter_survival_share" CHECK(winter_survival_share BETWEEN 0 AND 1),
	CONSTRAINT "planting_flags" CHECK(CASE WHEN json_valid(flags) THEN json_type(flags) = 'array' ELSE 0 END)
);
--> statement-breakpoint
CREATE INDEX `planting_bed` ON `planting` (`bed_id`);--> statement-breakpoint
CREATE INDEX `planting_variety` ON `planting` (`variety_id`);--> statement-breakpoint
CREATE TABLE `booking` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`client` text NOT NULL,
	`status` text NOT NULL,
	`event_on` text NOT NULL,
	`palette` text NOT NULL,
	`spare_share` real NOT NULL,
	`note` text NOT NULL,
	CONSTRAINT "booking_client" CHECK(client <> ''),
	CONSTRAINT "booking_status" CHECK(status IN ('enquiry', 'held', 'confirmed', 'cancelled')),
	CONSTRAINT "booking_event_on" CHECK(event_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(event_on) IS event_on),
	CONSTRAINT "booking_palette" CHECK(CASE WHEN json_valid(palette) THEN json_type(palette) = 'array' ELSE 0 END),
	CONSTRAINT "booking_spare_share" CHECK(spare_share BETWEEN 0 AND 1)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `booking_once` ON `booking` (`client`,`event_on`);--> statement-breakpoint
CREATE TABLE `booking_piece` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`booking_id` integer NOT NULL,
	`position` integer NOT NULL,
	`recipe_id` integer NOT NULL,
	`piece_count` real NOT NULL,
	`colours` text NOT NULL,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`recipe_id`) REFERENCES `recipe`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "booking_piece_position" CHECK(position BETWEEN 0 AND 1e15 AND position = CAST(position AS INTEGER)),
	CONSTRAINT "booking_piece_piece_count" CHECK(piece_count > 0 AND piece_count <= 1e300),
	CONSTRAINT "booking_piece_colours" CHECK(CASE WHEN json_valid(colours) THEN json_type(colours) = 'array' ELSE 0 END)
);
--> statement-breakpoint
CREATE INDEX `booking_piece_recipe` ON `booking_piece` (`recipe_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `booking_piece_place` ON `booking_piece` (`booking_id`,`position`);--> statement-breakpoint
CREATE TABLE `booking_stem_line` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`booking_id` integer NOT NULL,
	`position` integer NOT NULL,
	`role` text NOT NULL,
	`crop_id` integer,
	`crop_only` integer NOT NULL,
	`colours` text NOT NULL,
	`stem_count` real NOT NULL,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "booking_stem_line_position" CHECK(position BETWEEN 0 AND 1e15 AND position = CAST(position AS INTEGER)),
	CONSTRAINT "booking_stem_line_role" CHECK(role IN ('focal', 'secondary', 'line', 'filler', 'foliage', 'accent')),
	CONSTRAINT "booking_stem_line_crop_only" CHECK(crop_only IN (0, 1)),
	CONSTRAINT "booking_stem_line_crop_only_of_a_crop" CHECK(crop_only = 0 OR crop_id IS NOT NULL),
	CONSTRAINT "booking_stem_line_colours" CHECK(CASE WHEN json_valid(colours) THEN json_type(colours) = 'array' ELSE 0 END),
	CONSTRAINT "booking_stem_line_stem_count" CHECK(stem_count > 0 AND stem_count <= 1e300)
);
--> statement-breakpoint
CREATE INDEX `booking_stem_line_crop` ON `booking_stem_line` (`crop_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `booking_stem_line_place` ON `booking_stem_line` (`booking_id`,`position`);--> statement-breakpoint
CREATE TABLE `booking_unacceptable_crop` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`booking_id` integer NOT NULL,
	`position` integer NOT NULL,
	`crop_id` integer NOT NULL,
	FOREIGN KEY (`booking_id`) REFERENCES `booking`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "booking_unacceptable_crop_position" CHECK(position BETWEEN 0 AND 1e15 AND position = CAST(position AS INTEGER))
);
--> statement-breakpoint
CREATE INDEX `booking_unacceptable_crop_crop` ON `booking_unacceptable_crop` (`crop_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `booking_unacceptable_crop_place` ON `booking_unacceptable_crop` (`booking_id`,`position`);--> statement-breakpoint
CREATE TABLE `recipe` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`unit` text NOT NULL,
	`origin` text NOT NULL,
	CONSTRAINT "recipe_name" CHECK(name <> ''),
	CONSTRAINT "recipe_unit" CHECK(unit <> '')
);
--> statement-breakpoint
CREATE UNIQUE INDEX `recipe_name_once` ON `recipe` (`name`);--> statement-breakpoint
CREATE TABLE `recipe_line` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`recipe_id` integer NOT NULL,
	`position` integer NOT NULL,
	`role` text NOT NULL,
	`stems_per_piece` real NOT NULL,
	`colours` text NOT NULL,
	FOREIGN KEY (`recipe_id`) REFERENCES `recipe`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "recipe_line_position" CHECK(position BETWEEN 0 AND 1e15 AND position = CAST(position AS INTEGER)),
	CONSTRAINT "recipe_line_role" CHECK(role IN ('focal', 'secondary', 'line', 'filler', 'foliage', 'accent')),
	CONSTRAINT "recipe_line_stems_per_piece" CHECK(stems_per_piece > 0 AND stems_per_piece <= 1e300),
	CONSTRAINT "recipe_line_colours" CHECK(colours IN ('palette', 'any'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `recipe_line_place` ON `recipe_line` (`recipe_id`,`position`);--> statement-breakpoint
CREATE TABLE `bloom_curve` (
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
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`,`crop_id`) REFERENCES `variety`(`id`,`crop_id`) ON UPDATE cascade ON DELETE cascade,
	CONSTRAINT "bloom_curve_treatment" CHECK(treatment IN ('field', 'spring-planted', 'kept-in-ground', 'autumn-planted', 'tunnel')),
	CONSTRAINT "bloom_curve_anchor" CHECK((anchor_kind = 'day-of-year' AND first_cut IS NOT NULL AND days_after_planting IS NULL) OR (anchor_kind = 'days-after-planting' AND first_cut IS NULL AND days_after_planting IS NOT NULL)),
	CONSTRAINT "bloom_curve_first_cut" CHECK(first_cut GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || first_cut) IS '2027-' || first_cut),
	CONSTRAINT "bloom_curve_days_after_planting" CHECK(days_after_planting BETWEEN 0 AND 1e15 AND days_after_planting = CAST(days_after_planting AS INTEGER)),
	CONSTRAINT "bloom_curve_stems_per_plant_by_week" CHECK(CASE WHEN json_valid(stems_per_plant_by_week) THEN json_type(stems_per_plant_by_week) = 'array' ELSE 0 END),
	CONSTRAINT "bloom_curve_first_cut_spread_days" CHECK(first_cut_spread_days BETWEEN 0 AND 1e300),
	CONSTRAINT "bloom_curve_yield_spread" CHECK(yield_spread BETWEEN 0 AND 1e300),
	CONSTRAINT "bloom_curve_timing_mark" CHECK(timing_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own')),
	CONSTRAINT "bloom_curve_yield_mark" CHECK(yield_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_crop_once` ON `bloom_curve` (`crop_id`,`treatment`) WHERE variety_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_variety_once` ON `bloom_curve` (`variety_id`,`treatment`);--> statement-breakpoint
CREATE TABLE `crop` (
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
	CONSTRAINT "crop_hold_days_mark" CHECK(hold_days_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_field_days_mark" CHECK(field_days_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_bunch_stems_mark" CHECK(bunch_stems_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_bucket_stems_mark" CHECK(bucket_stems_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_buy_in_cents_mark" CHECK(buy_in_cents_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own')),
	CONSTRAINT "crop_cautions" CHECK(CASE WHEN json_valid(cautions) THEN json_type(cautions) = 'array' ELSE 0 END)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `crop_name_once` ON `crop` (`name`);--> statement-breakpoint
CREATE TABLE `variety` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`crop_id` integer NOT NULL,
	`name` text NOT NULL,
	`colour` text NOT NULL,
	FOREIGN KEY (`crop_id`) REFERENCES `crop`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "variety_name" CHECK(name <> ''),
	CONSTRAINT "variety_colour" CHECK(colour IN ('white', 'cream', 'blush', 'pink', 'coral', 'peach', 'apricot', 'orange', 'yellow', 'red', 'burgundy', 'plum', 'lavender', 'purple', 'blue', 'bronze', 'green', 'silver'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `variety_once` ON `variety` (`crop_id`,`name`);--> statement-breakpoint
CREATE UNIQUE INDEX `variety_of_crop` ON `variety` (`id`,`crop_id`);--> statement-breakpoint
CREATE TABLE `farm` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`is_invented` integer NOT NULL,
	`zone` text NOT NULL,
	`units` text NOT NULL,
	`picking_weekdays` text NOT NULL,
	`lead_days` integer NOT NULL,
	`order_days_ahead` integer NOT NULL,
	`spare_share` real NOT NULL,
	`frost_first_autumn_p10` text NOT NULL,
	`frost_first_autumn_p50` text NOT NULL,
	`frost_first_autumn_p90` text NOT NULL,
	`frost_last_spring_p10` text NOT NULL,
	`frost_last_spring_p50` text NOT NULL,
	`frost_last_spring_p90` text NOT NULL,
	`weight_confirmed` real NOT NULL,
	`weight_held` real NOT NULL,
	`weight_enquiry` real NOT NULL,
	`wage_cents_per_hour` integer NOT NULL,
	`dig_clumps_per_hour` real NOT NULL,
	`divide_clumps_per_hour` real NOT NULL,
	`replant_tubers_per_hour` real NOT NULL,
	`storage_cents_per_clump` integer NOT NULL,
	`storage_loss_share` real NOT NULL,
	`divisions_per_clump` real NOT NULL,
	`tuber_cents` integer NOT NULL,
	`tubers_wanted_share` real NOT NULL,
	`leaf_depth_metres` real NOT NULL,
	`leaf_cents_per_cubic_metre` integer NOT NULL,
	`tarp_cents_per_square_metre` integer NOT NULL,
	`cover_hours_per_square_metre` real NOT NULL,
	`winter_survival_share` real NOT NULL,
	`free_bed_cents_per_square_metre` integer NOT NULL,
	`leaf_cubic_metres_at_hand` real,
	`tarp_square_metres_at_hand` real,
	`hours_at_hand` real,
	`keep_share_at_most` real,
	CONSTRAINT "farm_one_row" CHECK(id = 1),
	CONSTRAINT "farm_name" CHECK(name <> ''),
	CONSTRAINT "farm_is_invented" CHECK(is_invented IN (0, 1)),
	CONSTRAINT "farm_units" CHECK(units IN ('us', 'metric')),
	CONSTRAINT "farm_picking_weekdays" CHECK(CASE WHEN json_valid(picking_weekdays) THEN json_type(picking_weekdays) = 'array' ELSE 0 END),
	CONSTRAINT "farm_lead_days" CHECK(lead_days BETWEEN 0 AND 1e15 AND lead_days = CAST(lead_days AS INTEGER)),
	CONSTRAINT "farm_order_days_ahead" CHECK(order_days_ahead BETWEEN 0 AND 1e15 AND order_days_ahead = CAST(order_days_ahead AS INTEGER)),
	CONSTRAINT "farm_spare_share" CHECK(spare_share BETWEEN 0 AND 1),
	CONSTRAINT "farm_frost_first_autumn_p10" CHECK(frost_first_autumn_p10 GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || frost_first_autumn_p10) IS '2027-' || frost_first_autumn_p10),
	CONSTRAINT "farm_frost_last_spring_p10" CHECK(frost_last_spring_p10 GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || frost_last_spring_p10) IS '2027-' || frost_last_spring_p10),
	CONSTRAINT "farm_frost_first_autumn_p50" CHECK(frost_first_autumn_p50 GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || frost_first_autumn_p50) IS '2027-' || frost_first_autumn_p50),
	CONSTRAINT "farm_frost_last_spring_p50" CHECK(frost_last_spring_p50 GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || frost_last_spring_p50) IS '2027-' || frost_last_spring_p50),
	CONSTRAINT "farm_frost_first_autumn_p90" CHECK(frost_first_autumn_p90 GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || frost_first_autumn_p90) IS '2027-' || frost_first_autumn_p90),
	CONSTRAINT "farm_frost_last_spring_p90" CHECK(frost_last_spring_p90 GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || frost_last_spring_p90) IS '2027-' || frost_last_spring_p90),
	CONSTRAINT "farm_autumn_frost_in_order" CHECK(frost_first_autumn_p10 <= frost_first_autumn_p50 AND frost_first_autumn_p50 <= frost_first_autumn_p90),
	CONSTRAINT "farm_spring_frost_in_order" CHECK(frost_last_spring_p90 <= frost_last_spring_p50 AND frost_last_spring_p50 <= frost_last_spring_p10),
	CONSTRAINT "farm_weights_in_order" CHECK(0 < weight_enquiry AND weight_enquiry < weight_held AND weight_held < weight_confirmed AND weight_confirmed <= 1),
	CONSTRAINT "farm_wage_cents_per_hour" CHECK(wage_cents_per_hour BETWEEN 0 AND 1e15 AND wage_cents_per_hour = CAST(wage_cents_per_hour AS INTEGER)),
	CONSTRAINT "farm_storage_cents_per_clump" CHECK(storage_cents_per_clump BETWEEN 0 AND 1e15 AND storage_cents_per_clump = CAST(storage_cents_per_clump AS INTEGER)),
	CONSTRAINT "farm_tuber_cents" CHECK(tuber_cents BETWEEN 0 AND 1e15 AND tuber_cents = CAST(tuber_cents AS INTEGER)),
	CONSTRAINT "farm_leaf_cents_per_cubic_metre" CHECK(leaf_cents_per_cubic_metre BETWEEN 0 AND 1e15 AND leaf_cents_per_cubic_metre = CAST(leaf_cents_per_cubic_metre AS INTEGER)),
	CONSTRAINT "farm_tarp_cents_per_square_metre" CHECK(tarp_cents_per_square_metre BETWEEN 0 AND 1e15 AND tarp_cents_per_square_metre = CAST(tarp_cents_per_square_metre AS INTEGER)),
	CONSTRAINT "farm_free_bed_cents_per_square_metre" CHECK(free_bed_cents_per_square_metre BETWEEN 0 AND 1e15 AND free_bed_cents_per_square_metre = CAST(free_bed_cents_per_square_metre AS INTEGER)),
	CONSTRAINT "farm_dig_clumps_per_hour" CHECK(dig_clumps_per_hour > 0 AND dig_clumps_per_hour <= 1e300),
	CONSTRAINT "farm_divide_clumps_per_hour" CHECK(divide_clumps_per_hour > 0 AND divide_clumps_per_hour <= 1e300),
	CONSTRAINT "farm_replant_tubers_per_hour" CHECK(replant_tubers_per_hour > 0 AND replant_tubers_per_hour <= 1e300),
	CONSTRAINT "farm_storage_loss_share" CHECK(storage_loss_share BETWEEN 0 AND 1),
	CONSTRAINT "farm_tubers_wanted_share" CHECK(tubers_wanted_share BETWEEN 0 AND 1),
	CONSTRAINT "farm_winter_survival_share" CHECK(winter_survival_share BETWEEN 0 AND 1),
	CONSTRAINT "farm_keep_share_at_most" CHECK(keep_share_at_most BETWEEN 0 AND 1),
	CONSTRAINT "farm_divisions_per_clump" CHECK(divisions_per_clump BETWEEN 0 AND 1e300),
	CONSTRAINT "farm_leaf_depth_metres" CHECK(leaf_depth_metres BETWEEN 0 AND 1e300),
	CONSTRAINT "farm_cover_hours_per_square_metre" CHECK(cover_hours_per_square_metre BETWEEN 0 AND 1e300),
	CONSTRAINT "farm_leaf_cubic_metres_at_hand" CHECK(leaf_cubic_metres_at_hand BETWEEN 0 AND 1e300),
	CONSTRAINT "farm_tarp_square_metres_at_hand" CHECK(tarp_square_metres_at_hand BETWEEN 0 AND 1e300),
	CONSTRAINT "farm_hours_at_hand" CHECK(hours_at_hand BETWEEN 0 AND 1e300)
);
--> statement-breakpoint
CREATE TABLE `change` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`made_at` text DEFAULT CURRENT_TIMESTAMP NOT NULL,
	`title` text NOT NULL,
	`undoes_change_id` integer
);
--> statement-breakpoint
CREATE TABLE `change_row` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`change_id` integer NOT NULL,
	`table_name` text NOT NULL,
	`row_id` integer NOT NULL,
	`before_json` text,
	`after_json` text,
	FOREIGN KEY (`change_id`) REFERENCES `change`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "change_row_says_something" CHECK(before_json IS NOT NULL OR after_json IS NOT NULL)
);
--> statement-breakpoint
CREATE INDEX `change_row_place` ON `change_row` (`change_id`,`table_name`,`row_id`);
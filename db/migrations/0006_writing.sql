ALTER TABLE `farm` ADD COLUMN `date_order` text DEFAULT 'ask' NOT NULL CONSTRAINT "farm_date_order" CHECK(date_order IN ('ask', 'month first', 'day first'));--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `own_colours` text DEFAULT '[]' NOT NULL CONSTRAINT "farm_own_colours" CHECK(CASE WHEN json_valid(own_colours) THEN json_type(own_colours) = 'array' ELSE 0 END);

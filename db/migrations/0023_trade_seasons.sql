ALTER TABLE `crop` ADD COLUMN `buy_in_colours` text DEFAULT '[]' NOT NULL CONSTRAINT "crop_buy_in_colours" CHECK(CASE WHEN json_valid(buy_in_colours) THEN json_type(buy_in_colours) = 'array' ELSE 0 END);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `buy_in_months` text DEFAULT '[]' NOT NULL CONSTRAINT "crop_buy_in_months" CHECK(CASE WHEN json_valid(buy_in_months) THEN json_type(buy_in_months) = 'array' ELSE 0 END);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `trade_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_trade_mark" CHECK(trade_mark IN ('published', 'published-secondary', 'our reading', 'trade', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `trade_source` text;

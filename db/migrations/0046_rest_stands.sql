ALTER TABLE `cut` ADD COLUMN `rest_stands` integer DEFAULT false NOT NULL CONSTRAINT "cut_rest_stands" CHECK(rest_stands IN (0, 1));--> statement-breakpoint
ALTER TABLE `tally` ADD COLUMN `rest_stands` integer DEFAULT false NOT NULL CONSTRAINT "tally_rest_stands" CHECK(rest_stands IN (0, 1));

ALTER TABLE `crop` ADD COLUMN `head_size` text CONSTRAINT "crop_head_size" CHECK(head_size IN ('small', 'medium', 'large'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `stem_length` text CONSTRAINT "crop_stem_length" CHECK(stem_length IN ('short', 'long'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `out_of_water` text CONSTRAINT "crop_out_of_water" CHECK(out_of_water IN ('holds', 'wilts'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `traits_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_traits_mark" CHECK(traits_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `traits_source` text;--> statement-breakpoint
ALTER TABLE `variety` ADD COLUMN `roles` text DEFAULT '[]' NOT NULL CONSTRAINT "variety_roles" CHECK(CASE WHEN json_valid(roles) THEN json_type(roles) = 'array' ELSE 0 END);--> statement-breakpoint
ALTER TABLE `variety` ADD COLUMN `head_size` text CONSTRAINT "variety_head_size" CHECK(head_size IN ('small', 'medium', 'large'));--> statement-breakpoint
ALTER TABLE `variety` ADD COLUMN `stem_length` text CONSTRAINT "variety_stem_length" CHECK(stem_length IN ('short', 'long'));--> statement-breakpoint
ALTER TABLE `variety` ADD COLUMN `out_of_water` text CONSTRAINT "variety_out_of_water" CHECK(out_of_water IN ('holds', 'wilts'));--> statement-breakpoint
ALTER TABLE `variety` ADD COLUMN `hold_days` real CONSTRAINT "variety_hold_days" CHECK(hold_days BETWEEN 0 AND 1e300);--> statement-breakpoint
ALTER TABLE `variety` ADD COLUMN `stretch_days` real CONSTRAINT "variety_stretch_days" CHECK(stretch_days BETWEEN 0 AND 1e300);

ALTER TABLE `bloom_curve` ADD COLUMN `heat_base_c` real;--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD COLUMN `heat_ceiling_c` real;--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD COLUMN `heat_from` text CONSTRAINT "bloom_curve_heat_from" CHECK(heat_from GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || heat_from) IS '2027-' || heat_from) CONSTRAINT "bloom_curve_heat" CHECK((heat_base_c IS NULL) = (heat_from IS NULL) AND (heat_ceiling_c IS NULL OR (heat_base_c IS NOT NULL AND heat_ceiling_c > heat_base_c)));--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD COLUMN `heat_place` text;--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD COLUMN `heat_mark` text DEFAULT 'own' NOT NULL CONSTRAINT "bloom_curve_heat_mark" CHECK(heat_mark IN ('published', 'published-secondary', 'trade', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD COLUMN `heat_source` text;

ALTER TABLE `bloom_curve` ADD `saleable_by_season` text DEFAULT '[]' NOT NULL CONSTRAINT "bloom_curve_saleable_by_season" CHECK(CASE WHEN json_valid(saleable_by_season) THEN json_type(saleable_by_season) = 'array' ELSE 0 END);--> statement-breakpoint
ALTER TABLE `planting` ADD `grade_out_told` integer DEFAULT true NOT NULL CONSTRAINT "planting_grade_out_told" CHECK(grade_out_told IN (0, 1));

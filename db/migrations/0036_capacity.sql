ALTER TABLE `farm` ADD COLUMN `cut_stems_per_hour` real DEFAULT 150 NOT NULL CONSTRAINT "farm_cut_stems_per_hour" CHECK(cut_stems_per_hour > 0 AND cut_stems_per_hour <= 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `cut_hours_per_day` real CONSTRAINT "farm_cut_hours_per_day" CHECK(cut_hours_per_day > 0 AND cut_hours_per_day <= 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `bench_stems_per_hour` real DEFAULT 36 NOT NULL CONSTRAINT "farm_bench_stems_per_hour" CHECK(bench_stems_per_hour > 0 AND bench_stems_per_hour <= 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `bench_hours_per_week` real CONSTRAINT "farm_bench_hours_per_week" CHECK(bench_hours_per_week > 0 AND bench_hours_per_week <= 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `bucket_places` integer CONSTRAINT "farm_bucket_places" CHECK(bucket_places BETWEEN 1 AND 1e15 AND bucket_places = CAST(bucket_places AS INTEGER));

ALTER TABLE `farm` ADD COLUMN `frost_alarm_c` real DEFAULT 2 NOT NULL CONSTRAINT "farm_frost_alarm_c" CHECK(frost_alarm_c BETWEEN -1e300 AND 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `cold_night_on` text CONSTRAINT "farm_cold_night_on" CHECK(cold_night_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(cold_night_on) IS cold_night_on);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `cold_night_low_c` real CONSTRAINT "farm_cold_night_low_c" CHECK(cold_night_low_c BETWEEN -1e300 AND 1e300);

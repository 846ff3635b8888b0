CREATE TABLE `weather_year` (
	`id` integer PRIMARY KEY NOT NULL,
	`high_tenths_c` text NOT NULL,
	`low_tenths_c` text NOT NULL,
	CONSTRAINT "weather_year_year" CHECK(id BETWEEN 1700 AND 2200),
	CONSTRAINT "weather_year_high_tenths_c" CHECK(CASE WHEN json_valid(high_tenths_c) THEN json_type(high_tenths_c) = 'array' ELSE 0 END),
	CONSTRAINT "weather_year_low_tenths_c" CHECK(CASE WHEN json_valid(low_tenths_c) THEN json_type(low_tenths_c) = 'array' ELSE 0 END),
	CONSTRAINT "weather_year_days" CHECK(CASE WHEN json_valid(high_tenths_c) AND json_valid(low_tenths_c) THEN json_array_length(high_tenths_c) IN (365, 366) AND json_array_length(low_tenths_c) = json_array_length(high_tenths_c) ELSE 0 END)
);

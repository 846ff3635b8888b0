CREATE TABLE `what_if` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`season_year` integer NOT NULL,
	`changes` text NOT NULL,
	CONSTRAINT "what_if_name" CHECK(name <> ''),
	CONSTRAINT "what_if_season_year" CHECK(season_year BETWEEN 1990 AND 1e15 AND season_year = CAST(season_year AS INTEGER)),
	CONSTRAINT "what_if_changes" CHECK(CASE WHEN json_valid(changes) THEN json_type(changes) = 'array' ELSE 0 END)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `what_if_once` ON `what_if` (`season_year`,`name`);
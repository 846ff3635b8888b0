CREATE TABLE `save_key` (
	`key` text PRIMARY KEY NOT NULL,
	`fingerprint` text NOT NULL,
	`change_id` integer NOT NULL,
	`result_json` text NOT NULL
);

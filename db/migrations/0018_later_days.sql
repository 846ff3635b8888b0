ALTER TABLE `bloom_curve` ADD `later_days` integer DEFAULT 0 NOT NULL CONSTRAINT "bloom_curve_later_days" CHECK(later_days BETWEEN -365 AND 365 AND later_days = CAST(later_days AS INTEGER));

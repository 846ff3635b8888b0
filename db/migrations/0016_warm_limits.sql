ALTER TABLE `bloom_curve` ADD `heat_limit_c` real CONSTRAINT "bloom_curve_heat_limit_c" CHECK(heat_limit_c IS NULL OR (heat_ceiling_c IS NOT NULL AND heat_limit_c > heat_ceiling_c));--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD `late_loss_share` real CONSTRAINT "bloom_curve_late_loss_share" CHECK(late_loss_share BETWEEN 0 AND 1);

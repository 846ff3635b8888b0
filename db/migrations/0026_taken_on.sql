ALTER TABLE `booking` ADD COLUMN `taken_on` text CONSTRAINT "booking_taken_on" CHECK(taken_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(taken_on) IS taken_on);

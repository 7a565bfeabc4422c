# Makes the references beside this file: Rscript nlme-references.R, R 4.2.2 with nlme 3.1-162 (maximum likelihood throughout).
# Orange is R's datasets::Orange, as typed into orange.csv. The twenty batches are simulated here, seed 20261125.
suppressPackageStartupMessages(library(nlme))
digits <- function(x) format(x, digits = 15, trim = TRUE, scientific = FALSE)
# Tighter still, nlme halves its steps to death; Orange bears its defaults only.
tight <- nlmeControl(tolerance = 1e-8, pnlsTol = 1e-6, maxIter = 500)
report <- function(set, fit) {
  spread <- as.numeric(VarCorr(fit)[, "StdDev"])
  random <- length(spread) - 1
  rows <- data.frame(set, quantity = names(fixef(fit)), value = digits(fixef(fit)))
  rows <- rbind(rows, data.frame(set, quantity = paste0("sd_", names(fixef(fit))[seq_len(random)]),
    value = digits(fit$sigma * sqrt(diag(as.matrix(fit$modelStruct$reStruct[[1]]))))))
  rows <- rbind(rows, data.frame(set, quantity = c("residual", "log_likelihood"), value = digits(c(fit$sigma, as.numeric(logLik(fit))))))
  if (random == 3) {
    correlation <- cov2cor(as.matrix(fit$modelStruct$reStruct[[1]]))
    rows <- rbind(rows, data.frame(set, quantity = c("cor_12", "cor_13", "cor_23"), value = digits(correlation[c(2, 3, 6)])))
  }
  rows
}
orange <- nlme(circumference ~ Asym / (1 + exp((xmid - age) / scal)), data = Orange, fixed = Asym + xmid + scal ~ 1,
  random = Asym ~ 1 | Tree, start = c(Asym = 190, xmid = 720, scal = 340))

set.seed(20261125)
batches <- do.call(rbind, lapply(1:20, function(batch) {
  theta <- c(log(5.5), log(0.042), 35) + c(0.12, 0.07, 2.5) * rnorm(3)
  age <- c(7, 14, 21, 28, 35, 42, 52, 66)
  data.frame(batch, age_d = age, log_kg = round(theta[1] - exp(-exp(theta[2]) * (age - theta[3])) + 0.02 * rnorm(8), 6))
}))
gompertz <- function(start) nlme(log_kg ~ logA - exp(-exp(logk) * (age_d - tstar)), data = batches,
  fixed = logA + logk + tstar ~ 1, random = logA + logk + tstar ~ 1 | batch, start = start, control = tight)
first <- gompertz(c(logA = 1.7, logk = -3.2, tstar = 35))
second <- gompertz(c(logA = 1.8, logk = -3.1, tstar = 33))
stopifnot(max(abs(fixef(first) / fixef(second) - 1)) < 1e-7)

table <- rbind(report("orange", orange), report("twenty-batches", first))
head <- paste("# Source: nlme", packageVersion("nlme"), "on", R.version.string, "- made by nlme-references.R beside this file.")
write.lines <- function(file, head, rows) {
  writeLines(c(head, paste(names(rows), collapse = ","), do.call(paste, c(rows, sep = ","))), file)
}
write.lines("nlme-references.csv", head, table)
write.lines("twenty-batches.csv", "# Simulated by nlme-references.R beside this file, seed 20261125: no birds.", batches)
write.lines("orange.csv", c("# R datasets::Orange: trunk circumference (mm) of orange trees by age (days since 1968-12-31).",
  "# Source: Draper, N. and Smith, H. 1998, Applied Regression Analysis, 3rd ed., exercise 24.N."),
  data.frame(tree = as.character(Orange$Tree), age_d = Orange$age, circumference_mm = Orange$circumference))

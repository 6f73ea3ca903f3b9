# What is wrong with a job, a machine or a readings file.
